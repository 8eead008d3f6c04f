package lampproof.lint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** A deck that does no harm and runs, put together by chance from what ngspice allows. */
final class HarmlessDeck {

    private static final List<String> BLOCKS =
            List.of("""
            .param top#={1k*2} low#='500+top#/4'
            R1# a n# {top#}
            R2# n# 0 'low#'
            """, """
            D# a n# DIO#
            R# n# 0 1k
            C# n# 0 1u
            .model DIO# d(is=1e-14 rs=0.1 cjo=1p)
            """, """
            X# a n# filter# params: rx=2k cx='2*1n'
            R# n# 0 1MEG
            .subckt filter# in out rx=1k cx=1n
            R1 in out {rx}
            C1 out 0 {cx}
            .ends filter#
            """, """
            .param detail#=2
            .if (detail# == 1)
            R# a n# 1k
            .elseif (detail# >= 2 && detail# < 3)
            R# a n# 2k
            .else
            R# a n# 3k
            .endif
            R9# n# 0 1k
            """, """
            .param long#=1
            .if (long# > 0)
            .param r#=1k
            .else
            .param r#=2k
            .endif
            R# a n# {r#}
            C# n# 0 10n
            R9# n# 0 10k
            """, """
            B# n# 0 V = v(a) > 0.5 ? 1 : (v(a) <= -0.5 ? -1 : 0)
            R# n# m# 1k
            C# m# 0 20p
            R9# m# 0 1MEG
            """, """
            B# 0 n# I = {1e-3*(1+1)}*v(a)*(v(a) >= 0) + 1e-6*abs(v(a))
            R# n# 0 1k
            """, """
            E# n# 0 vol='v(a) > 0 ? v(a) : 0'
            R# n# 0 1k
            G# 0 m# cur='v(n#)*1m'
            R9# m# 0 1k
            """, """
            E1# n# 0 a 0 2
            F# 0 m# V# 3
            H# p# 0 V# 4
            V# n# q# 0
            R1# q# 0 1k
            R2# m# 0 1k
            R3# p# 0 1k
            """, """
            S# a n# ctrl# 0 SWITCH#
            R# n# 0 1k
            Vc# ctrl# 0 PULSE(0 5 0 1u 1u 50u 100u)
            .MODEL SWITCH# SW(VT=2.5 VH=0.5 RON=0.1 ROFF=1e6)
            """, """
            V# n# 0 PWL(0 0
            + 10u 1
            * the ramp goes down again

            + 20u 0.5)
            R# n# 0 1k
            """, """
            I# 0 n# SIN(0 1m 10k)
            R# n# 0 1k
            L1# n# m# 1m
            L2# p# 0 4m
            K# L1# L2# 0.99
            R1# m# 0 10
            R2# p# 0 1k
            """, """
            .func twice#(x) {2*x}
            .func larger#(x,y) {x > y ? x : y}
            R# a n# {twice#(500)}
            R9# n# 0 {larger#(1k, 2k)}
            """, """
            A# a n# amp#
            R# n# 0 1k
            .model amp# gain(in_offset=0 gain=2 out_offset=0)
            """, """
            Ain# [a] [d1#] adc#
            Anot# d1# d2# inv#
            Aout# [d2#] [n#] dac#
            R# n# 0 1k
            .model adc# adc_bridge(in_low=0.2 in_high=0.4)
            .model inv# d_inverter(rise_delay=1n fall_delay=1n)
            .model dac# dac_bridge(out_low=0 out_high=5)
            """, """
            Q# n# base# 0 npn#
            R1# a base# 10k
            R2# a n# 1k
            .model npn# npn(bf=100
            + is=1e-15)
            """, """
            M# n# a 0 0 nmos# l=1u w=10u
            R# a n# 10k
            .model nmos# nmos(level=1 vto=0.7 kp=1e-4)
            """, """
            * a comment with > and < and `backquotes` and ; and $dollar { brace
            R# a n# 1k
            R9# n# 0 1k
            """);

    private static final List<String> DIRECTIVES = List.of(
            ".temp 27",
            ".global vcc",
            ".options reltol=1e-3 abstol=1e-9 method=gear",
            ".OPTION itl4=50 noacct",
            ".options gmin={1e-12}",
            ".csparam limit={2*3}",
            ".ic v(a)=0",
            ".nodeset v(a)=0",
            ".save v(a) i(vin)",
            ".meas tran extra MAX v(a) from=0 to='50u'",
            ".meas tran rise TRIG v(a) VAL=0.1 RISE=1 TARG v(a) VAL='0.1+0.2' RISE=1",
            ".four 10k v(a)",
            ".width out=80");

    private static final List<String> COMMANDS = List.of(
            "tran 1u 200u\nlet p = v(a)*i(vin)\nprint mean(p)",
            "tran 1u 200u\nlet above = v(a) gt 0.5\nlet also = v(a) >= 0.5\nlet small = (v(a) le 1) * 2\nprint maximum(above)",
            "tran 1u 200u\nmeas tran peak MAX v(a)\nif peak > 0.5\n  echo \"peak > 0.5 V: $&peak\"\nelse\n  echo 'small'\nend",
            "if v(a)[0] < 1e9 and v(a)[0] >= -1e9\necho in range\nend",
            "let n = 0\nwhile n < 3\n  let n = n + 1\nend\nprint n",
            "let m = 3\ndowhile m > 0\nlet m = m - 1\nend",
            "repeat 2\necho again\nend",
            "foreach r 1k 2k 5k\n  alter rload = $r\n  op\n  print v(a)\nend",
            "foreach word one \"two words\" three\necho $word\nend",
            "tran 1u 200u\nset numdgt=7\nset wr_singlescale wr_vecnames\nwrdata table#.csv v(a) i(vin)",
            "set list = ( 1 2 3 )\necho $list[2] of $#list\nset two = $list[2]",
            "set label = \"two words\"\nset other = 'three'\necho $label $other $?label",
            "let volt = 2.5\nset volt = $&volt\necho value: {$volt} $&volt",
            "tran 1u 200u\nset units=degrees filetype=ascii\nwrite raw#.raw v(a)",
            "set was = $curplot\nsetplot const\nprint pi\nsetplot $was",
            "strcmp same \"one\" \"one\"\nif $same = 0\necho equal\nend",
            "define larger(x,y) ((x > y) * x + (x <= y) * y)\nprint larger(1,2)",
            "tran 1u 200u\nmeas tran mean AVG v(a) from=10u to=90u\nmeas tran cross WHEN v(a)=0.2 RISE=1",
            "tran 1u 200u\nlinearize v(a)\nfft v(a)\nlet size = mag(v(a))\nprint length(size)\nsetplot previous",
            "option reltol=1e-4\nop\nprint v(a)",
            "alter rload = 2k\naltermod basic is=2e-14\ntran 1u 50u",
            "alterparam volts=2\nreset\nrun\nprint maximum(v(a))",
            "stop when time > 20u\nrun\ndelete all\nresume",
            "compose steps start=0 stop=1 step=0.5\nprint steps\nunlet steps",
            "if $sim_status > 0\n  quit 1\nend",
            "* a comment with > and ` in it\n# and another\necho done ; finished\nop $ the point",
            "tran 1u 200u\nwrdata long#.csv v(a)\n+ i(vin)\n\n+ v(a)",
            "tran 1u 200u\nfourier 10k v(a)\nfourier 20k v(a)",
            "listing expand\nshow rload\nrusage time\nversion",
            "save v(a) i(vin)\ntran 1u 50u\ndisplay",
            "tran 1u 200u\nSET NUMDGT=5\nLET UPPER = V(A)\nPRINT LENGTH(UPPER)",
            "dc vin 0 1 0.5\nprint v(a)\nac dec 5 1 1k\nprint vdb(a)\nsetplot previous",
            "destroy all\nrun\nasciiplot v(a) title \"a > b\"",
            "tran 1u 200u\nset appendwrite\nwrdata ./more_#.txt v(a)\nunset appendwrite",
            "let k = 0\nwhile k < 4\nlet k = k + 1\nif k = 2\ncontinue\nend\nif k = 3\nbreak\nend\nend");

    private final Random random;

    private HarmlessDeck(long seed) {
        random = new Random(seed);
    }

    /** The deck of a seed. */
    static String of(long seed) {
        return new HarmlessDeck(seed).deck(seed);
    }

    private String deck(long seed) {
        String control = random.nextInt(6) == 0 ? "" : control();
        List<String> lines = new ArrayList<>(List.of(
                "* harmless " + seed + ", 5 V -> 3.3 V; 'quotes' and \"more\"",
                ".param volts=1",
                "Vin a 0 DC {volts} AC 1 SIN(0 {volts} 10k)",
                "Rload a 0 1k",
                "Dbasic a 0 basic",
                ".model basic d(is=1e-14)"));
        pick(BLOCKS, 1 + random.nextInt(5)).forEach(block -> lines.add(block.strip()));
        lines.addAll(pick(DIRECTIVES, random.nextInt(5)));
        lines.add(".tran 1u 200u");
        lines.add(control.isEmpty() ? ".print tran v(a)" : control);
        lines.add(".end");
        return written(String.join("\n", lines) + "\n");
    }

    private String control() {
        String commands = String.join("\n", pick(COMMANDS, 1 + random.nextInt(6)));
        return ".control\nrun\n" + commands + "\nquit 0\n.endc";
    }

    /** A few of a list, each with a number of its own in the place of every number sign that stands for one. */
    private List<String> pick(List<String> all, int count) {
        List<String> shuffled = new ArrayList<>(all);
        Collections.shuffle(shuffled, random);
        List<String> picked = new ArrayList<>();
        for (String each : shuffled.subList(0, Math.min(count, shuffled.size()))) {
            picked.add(each.replaceAll("(?<=\\w)#", String.valueOf(picked.size() + 1)));
        }
        return picked;
    }

    /** The deck with the line ends, the blanks and the letters of one editor or another. */
    private String written(String deck) {
        return switch (random.nextInt(5)) {
            case 0 -> deck.replace("\n", "\r\n");
            case 1 -> deck.replace("\n.control", "\n\n.CONTROL").replace("\n.endc", "\n.ENDC ");
            case 2 -> indented(deck);
            case 3 -> deck.replace("\n.tran 1u", "\n.TRAN 1U").replace("\n.end\n", "\n.END\n\n");
            default -> deck;
        };
    }

    private String indented(String deck) {
        return String.join(
                "\n",
                Arrays.stream(deck.split("\n", -1))
                        .map(line -> line.isEmpty() || line.startsWith("*") || random.nextInt(4) > 0
                                ? line
                                : "\t" + line.toLowerCase(Locale.ROOT).strip())
                        .toList());
    }
}
