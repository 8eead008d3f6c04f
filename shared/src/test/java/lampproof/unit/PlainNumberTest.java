package lampproof.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class PlainNumberTest {

    @Test
    void numbersAreTheSameInEveryCountry() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(PlainNumber.fixed(-1234.5678, 2)).isEqualTo("-1234.57");
            assertThat(PlainNumber.signed(1.5, 2)).isEqualTo("+1.50");
            assertThat(PlainNumber.significant(1.5e-6, 3)).isEqualTo("1.50e-06");
            assertThat(PlainNumber.grouped(50_000)).isEqualTo("50 000");
        } finally {
            Locale.setDefault(before);
        }
    }
}
