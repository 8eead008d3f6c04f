package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import lampproof.fault.UserFault;
import lampproof.waveform.Span;
import org.junit.jupiter.api.Test;

class LineWindowTest {

    @Test
    void aWholePeriodIsTakenWhereThereIsOneAndElseHalfOfOne() {
        assertThat(LineWindow.lastOrHalf(new Span(0, 45e-3), 50).text()).isEqualTo("25 ms to 45 ms, 1 line period");
        assertThat(LineWindow.lastOrHalf(new Span(0, 15e-3), 50).text()).isEqualTo("5 ms to 15 ms, 1 line half period");
    }

    /** The first point of a simulator lies a hundredth of its step after zero. */
    @Test
    void aRecordThatBeginsJustAfterZeroHoldsTheHalfPeriod() {
        assertThat(LineWindow.lastOrHalf(new Span(28e-9, 10e-3), 50).periods()).isEqualTo(1);
        assertThatThrownBy(() -> LineWindow.lastOrHalf(new Span(10e-6, 10e-3), 50))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("holds 0 whole line half periods of 10 ms");
    }
}
