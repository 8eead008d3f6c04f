package lampproof.lint;

import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.Random;
import lampproof.fault.UserFault;
import lampproof.lint.netlist.NetlistReader;
import lampproof.lint.rule.LintFinding;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever happens to a deck, the linter answers with findings or with a fault of the user, never with a crash. */
class MutatedDecksTest {

    private static final String LETTERS = "\n\n+*.$;/{}()'\"=,<#@`>~ \t\0MkF0179eERCLVISDXBEm\u00b5\u2126";
    private static final int ROUNDS = 150;

    @ParameterizedTest
    @ValueSource(strings = {"clean-step-up.cir", "clean-step-down.cir"})
    void aMutatedDeckNeverCrashesTheLinter(String name) throws Exception {
        String clean = Decks.clean(name);
        Random random = new Random(20_240_607);
        for (int round = 0; round < ROUNDS; round++) {
            String deck = mutated(clean, random);
            assertThatCode(() -> check(deck)).as(deck).doesNotThrowAnyException();
        }
    }

    private static void check(String deck) {
        try {
            Linter.check(NetlistReader.parse(deck, "deck.cir")).forEach(LintFinding::text);
        } catch (UserFault refused) {
            // a deck may be too large or nested too deep
        }
    }

    private static String mutated(String clean, Random random) {
        StringBuilder deck = new StringBuilder(clean);
        for (int change = 0; change < 1 + random.nextInt(20); change++) {
            int at = random.nextInt(deck.length());
            int to = Math.min(deck.length(), at + random.nextInt(8));
            String letter = String.valueOf(LETTERS.charAt(random.nextInt(LETTERS.length())));
            switch (random.nextInt(3)) {
                case 0 -> deck.insert(at, letter);
                case 1 -> deck.replace(at, to, letter);
                default -> deck.delete(at, to);
            }
        }
        return deck.toString();
    }
}
