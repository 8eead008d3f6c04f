package lampproof.spec;

import java.util.HexFormat;
import java.util.List;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/** Recognises the workbook of a spreadsheet program by its first bytes. */
final class Workbook {

    /** A zip archive (xlsx, ods), also an empty one, and the older compound file (xls). */
    private static final List<String> SIGNATURES = List.of("504b0304", "504b0506", "d0cf11e0a1b11ae1");

    private static final int LONGEST = 8;

    private Workbook() {}

    /**
     * Rejects a workbook.
     *
     * @throws UserFault when the bytes begin like a workbook
     */
    static void reject(byte[] bytes, String file) {
        String start = HexFormat.of().formatHex(bytes, 0, Math.min(LONGEST, bytes.length));
        if (SIGNATURES.stream().anyMatch(start::startsWith)) {
            throw UserFault.badInput(Finding.of(
                    "the spec is a workbook, not a text table", file, "save the sheet as CSV and name that file"));
        }
    }
}
