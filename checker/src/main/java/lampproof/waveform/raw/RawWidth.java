package lampproof.waveform.raw;

/**
 * How many bytes a value has in a binary raw file; the file itself does not say.
 *
 * @param scale bytes of the scale
 * @param value bytes of any other vector
 * @param signMarks whether the sign of the time is a mark of LTspice's compression, not a sign
 */
record RawWidth(int scale, int value, boolean signMarks) {

    /** Bytes of a whole row. */
    int row(RawHead head) {
        return scale + value * (head.vectors().size() - 1);
    }

    String words() {
        return value + "-byte values";
    }
}
