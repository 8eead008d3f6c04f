package lampproof.spec;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.StringReader;
import java.util.List;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** Tables for the tests, and the lines that the user would read. */
final class Faulty {

    static final String HEADER = "quantity,min,typ,max,unit,note\n";

    /** The required rows, which have no fault. */
    static final String REQUIRED = """
            driver.topology,,step-down,,,
            line.voltage,207,230,253,V,
            line.frequency,,50,,Hz,
            string.voltage,,33,,V,
            string.current,,0.21,,A,
            """;

    private Faulty() {}

    /** Reads a comma-separated table of the required rows, on lines 2 to 6, and one row more, on line 7. */
    static Spec withRow(String row) {
        return read(HEADER + REQUIRED + row);
    }

    /** The same table as a spreadsheet writes it where the decimal mark is a comma. */
    static Spec withSemicolonRow(String row) {
        String rows = (HEADER + REQUIRED).replace(',', ';').replace('.', ',').replaceAll("([a-z]),([a-z])", "$1.$2");
        return read(rows + row);
    }

    static Spec read(String table) {
        return SpecReader.read(new StringReader(table), "lamp.csv");
    }

    /** The findings of the fault that the reading throws, as the user reads them. */
    static List<String> findings(ThrowingCallable reading) {
        UserFault fault = catchThrowableOfType(UserFault.class, reading);
        return fault.findings().stream().map(Finding::text).toList();
    }

    static List<String> findingsOfRow(String row) {
        return findings(() -> withRow(row));
    }
}
