package lampproof.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestChangeTest {

    private static final String TOO_HOT = "ambient.temperature,,80,,degC,\nthermal.housing,,25,,K/W,\n";

    @Test
    void aStringThatNoConverterCarriesGetsOneThatIsCarried() {
        Lamp lamp = Lamps.small("");
        List<StringRange> between = StringRange.read("320..360");
        assertThat(DesignSpace.of(lamp, between, PartTable.shipped()).candidates())
                .isEmpty();
        NearestChange change =
                NearestChange.of(lamp, between, PartTable.shipped()).get(0);
        double voltage = change.candidate().arrangement().voltage();
        assertThat(voltage).matches(v -> v < Math.sqrt(2) * 207 || v > Math.sqrt(2) * 253);
        assertThat(change.text()).startsWith("a string of ");
    }

    @Test
    void aLampThatIsTooHotGetsLessLightOrCoolerAir() {
        Lamp lamp = Lamps.small(TOO_HOT);
        List<StringRange> ranges = StringRange.read("390..430");
        DesignSpace space = DesignSpace.of(lamp, ranges, PartTable.shipped());
        assertThat(space.candidates()).isEmpty();
        assertThat(space.reasons().keySet()).allMatch(reason -> reason.contains("hotter than its rating"));
        List<NearestChange> changes = NearestChange.of(lamp, ranges, PartTable.shipped());
        assertThat(changes).extracting(NearestChange::text).anyMatch(text -> text.startsWith("air of "));
        assertThat(changes)
                .allSatisfy(
                        change -> change.candidate().solution().temperatures().requireRated());
    }
}
