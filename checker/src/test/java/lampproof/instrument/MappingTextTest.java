package lampproof.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import lampproof.fault.UserFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MappingTextTest {

    private static final String FORM = "QUANTITY=COLUMN[*GAIN][+OFFSET][@DELAY]";

    @Test
    void gainOffsetAndDelayStandBehindTheColumn() {
        assertThat(read("line.voltage=CH1*200,line.current='CH 2'*-0.1+0.02@2us"))
                .containsExactly(
                        new Mapping("line.voltage", "CH1", 200, 0, 0),
                        new Mapping("line.current", "CH 2", -0.1, 0.02, 2e-6));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "light=CH3|CH3|1|0|0",
                "light = CH3 * 1e-3 |CH3|0.001|0|0",
                "light=column 2-0.5|column 2|1|-0.5|0",
                "light=CH3@-1.5ms|CH3|1|0|-0.0015",
                "light=\"a,b*c\"*2|a,b*c|2|0|0"
            })
    void eachPartMayBeLeftOut(String text, String column, double gain, double offset, double delay) {
        assertThat(read(text)).containsExactly(new Mapping("light", column, gain, offset, delay));
    }

    @Test
    void anUnknownQuantityIsToldWithItsNearest() {
        assertRefused(
                "line.curent=CH1",
                "--map: unknown quantity, found 'line.curent', allowed: line.voltage, line.current, light, "
                        + "string.current; did you mean line.current?");
    }

    @Test
    void whatMapsNothingIsTold() {
        assertRefused("line.voltage", "--map: invalid mapping, found 'line.voltage', allowed: " + FORM);
        assertRefused("light=CH1*two", "--map: invalid mapping, found 'light=CH1*two', allowed: " + FORM);
        assertRefused("light=CH1@2min", "--map: invalid mapping, found 'light=CH1@2min', allowed: " + FORM);
        assertRefused("", "--map: nothing is mapped, allowed: " + FORM);
    }

    @Test
    void everyFaultIsToldAtOnce() {
        assertRefused(
                "light=CH1*0,light=CH2@1s,light=CH1,light=CH2",
                "--map: invalid gain or offset, found '0.0, 0.0', allowed: a finite gain that is not 0, a finite offset\n"
                        + "--map: the delay is too long, found '1 s', allowed: up to 100 ms\n"
                        + "--map: light is mapped twice; map it once");
    }

    @Test
    void aGainThatIsNotFiniteIsRefused() {
        assertRefused(
                "light=CH1*1e999",
                "--map: invalid gain or offset, found 'Infinity, 0.0', allowed: a finite gain that is not 0, a finite offset");
    }

    private static void assertRefused(String text, String message) {
        assertThatThrownBy(() -> read(text))
                .isInstanceOfSatisfying(
                        UserFault.class, fault -> assertThat(fault.kind()).isEqualTo(UserFault.Kind.BAD_INPUT))
                .hasMessage(message);
    }

    private static List<Mapping> read(String text) {
        return MappingText.read(text, CaptureQuantity.words());
    }
}
