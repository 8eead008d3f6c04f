package lampproof.lint.rule;

import java.util.List;
import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Word;

/** Output on the print grid in place of the steps that the simulator took. */
final class InterpolatedOutput implements Rule {

    @Override
    public String name() {
        return "interpolated-output";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return Options.of(netlist)
                .flatMap(List::stream)
                .filter(word -> word.is("interp"))
                .map(this::finding);
    }

    private LintFinding finding(Word word) {
        return error(
                word.place(),
                "interp puts the output on the print grid",
                "the points at the switching edges are lost: an rms current was 24 % high in one run",
                "no interp; a shorter run or fewer saved vectors where the file is too large");
    }
}
