package org.straddle.visit;

/** Whether a picture goes on to its end; a reader of its data at the beginning would not notice. */
final class PictureEnd {

    private static final byte[] PNG_END = {'I', 'E', 'N', 'D'};

    private PictureEnd() {
    }

    /** ITU-T T.81: segments with their lengths up to the start of the scan, and an end-of-image marker after it. */
    static boolean ofJpeg(byte[] bytes) {
        int at = 2;
        while (at + 4 <= bytes.length && bytes[at] == (byte) 0xFF) {
            int marker = bytes[at + 1] & 0xFF;
            if (marker == 0xDA) {
                return endsAfter(bytes, at);
            }
            // Markers without a length: fill bytes, TEM, and restarts.
            boolean bare = marker == 0xFF || marker == 0x01 || marker >= 0xD0 && marker <= 0xD8;
            at += marker == 0xFF ? 1 : bare ? 2 : 2 + ((bytes[at + 2] & 0xFF) << 8 | bytes[at + 3] & 0xFF);
        }
        return false;
    }

    private static boolean endsAfter(byte[] bytes, int scan) {
        for (int i = bytes.length - 2; i > scan; i--) {
            if (bytes[i] == (byte) 0xFF && bytes[i + 1] == (byte) 0xD9) {
                return true;
            }
        }
        return false;
    }

    /** ISO/IEC 15948: the last chunk is IEND, eight bytes before the end. */
    static boolean ofPng(byte[] bytes) {
        int at = bytes.length - 8;
        for (int i = 0; i < PNG_END.length; i++) {
            if (at < 0 || bytes[at + i] != PNG_END[i]) {
                return false;
            }
        }
        return true;
    }
}
