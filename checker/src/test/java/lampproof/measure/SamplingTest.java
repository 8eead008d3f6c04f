package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SamplingTest {

    @Test
    void evenStepsHaveNoGapsAndAreSamples() {
        Sampling sampling = sampling(every(1e-3, 0, 200));
        assertThat(sampling.interpolation()).isEqualTo(Interpolation.SAMPLED);
        assertThat(sampling.gaps().fault()).isEmpty();
        assertThat(sampling.gaps().remark()).isEmpty();
    }

    @Test
    void aLostRowLeavesTheRecordEvenAndIsSaid() {
        Sampling sampling = sampling(DoubleStream.concat(every(1e-3, 0, 76), every(1e-3, 78, 200)));
        assertThat(sampling.interpolation()).isEqualTo(Interpolation.SAMPLED);
        assertThat(sampling.gaps().fault()).isEmpty();
        assertThat(sampling.gaps().remark())
                .hasValue("no sample from 76 ms to 78 ms, step 1.00 ms elsewhere: bridged by straight lines");
    }

    @Test
    void aDoubledRowLeavesTheRecordEvenAndIsSaid() {
        Sampling sampling = sampling(DoubleStream.concat(every(1e-3, 0, 77), every(1e-3, 77, 200)));
        assertThat(sampling.interpolation()).isEqualTo(Interpolation.SAMPLED);
        assertThat(sampling.gaps().remark())
                .hasValue("rows follow each other too early in 1 place, step 1.00 ms elsewhere: doubled?");
    }

    @Test
    void aHoleThatTakesPartOfALinePeriodIsAFault() {
        Sampling sampling = sampling(DoubleStream.concat(every(50e-6, 0, 640), every(50e-6, 1100, 2000)));
        assertThat(sampling.gaps().fault()).hasValue("no sample from 32 ms to 55 ms, step 50.0 µs elsewhere");
    }

    /** 25 rows of each 100 are missing: 26 steps of 5 us. */
    @Test
    void manyShortHolesAreAFaultTogether() {
        Sampling sampling =
                sampling(IntStream.range(0, 10_000).filter(k -> k % 100 < 75).mapToDouble(k -> k * 5e-6));
        assertThat(sampling.gaps().fault())
                .isPresent()
                .get()
                .asString()
                .endsWith("and in 98 more places, step 5.00 µs elsewhere");
    }

    /** A logger that takes 15 samples of each 133: every fifteenth step is too long. */
    @Test
    void burstsOfSamplesAreFullOfGaps() {
        Sampling sampling =
                sampling(IntStream.range(0, 10_000).filter(k -> k % 133 < 15).mapToDouble(k -> k * 50e-6));
        assertThat(sampling.gaps().fault()).get().asString().endsWith("and in 74 more places, step 50.0 µs elsewhere");
    }

    @Test
    void aPartOfAPeriodWithoutAnySampleIsNotFollowed() {
        Sampling sampling = sampling(DoubleStream.concat(
                IntStream.range(0, 300).mapToDouble(k -> 1e-7 * k * k),
                IntStream.range(0, 300).mapToDouble(k -> 0.02 + 1e-7 * k * k)));
        assertThat(sampling.even()).isFalse();
        assertThat(sampling.follows(50)).isFalse();
        assertThat(sampling.follows(10)).isTrue();
    }

    @Test
    void theStepsOfASimulatorAreUnevenAndHaveNoGaps() {
        Sampling sampling = sampling(IntStream.range(0, 500).mapToDouble(k -> 1e-6 * k * k));
        assertThat(sampling.interpolation()).isEqualTo(Interpolation.LINEAR);
        assertThat(sampling.gaps().fault()).isEmpty();
        assertThat(sampling.gaps().remark()).isEmpty();
    }

    @Test
    void pointsThatShareATimeCountOnceInTheRate() {
        Sampling sampling = sampling(IntStream.range(0, 2000).mapToDouble(k -> Math.floorDiv(k, 200) * 1e-2));
        assertThat(sampling.rate()).isEqualTo(9 / 0.09);
        assertThat(sampling.follows(50)).isFalse();
    }

    private static DoubleStream every(double step, int first, int last) {
        return IntStream.rangeClosed(first, last).mapToDouble(k -> k * step);
    }

    private static Sampling sampling(DoubleStream times) {
        StringBuilder text = new StringBuilder("time,v\n");
        times.forEach(time -> text.append(time).append(",1\n"));
        return Sampling.of(Wave.file(text.toString()));
    }
}
