package org.straddle.exchange;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** A file from elsewhere, read once: what is understood and what is kept are then the same bytes. */
public final class SourceFile {

    /** The public catalogue with all objects is smaller in every format; above it a file is not a set of elements. */
    public static final int LARGEST_BYTES = 64 << 20;

    private static final String RIGHT_FILE = "Choose a text file with element sets (TLE, or OMM as KVN, XML, JSON or CSV),"
            + " or one of Earth orientation (finals2000A or eopc04).";

    private final String name;
    private final byte[] bytes;

    /** @param name as the user knows it, for messages and for the copy that is kept */
    public SourceFile(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes.clone();
    }

    /** @throws ReadException when it cannot be read, is no plain file, is empty or too large */
    public static SourceFile read(Path path) throws ReadException {
        String name = path.getFileName().toString();
        if (!Files.isRegularFile(path)) {
            throw new ReadException(name, 0, Files.exists(path) ? "this is not a plain file." : "there is no such file.",
                    RIGHT_FILE);
        }
        try (InputStream in = Files.newInputStream(path)) {
            byte[] bytes = Files.size(path) > LARGEST_BYTES ? null : in.readNBytes(LARGEST_BYTES + 1);
            if (bytes == null || bytes.length > LARGEST_BYTES) {
                throw new ReadException(name, 0, "the file is larger than " + (LARGEST_BYTES >> 20) + " MB.",
                        "Choose a file with fewer element sets; those of the event's birds are enough.");
            }
            return new SourceFile(name, bytes);
        } catch (ReadException e) {
            throw e;
        } catch (IOException e) {
            throw new ReadException(name, 0, "the file cannot be read (" + e.getMessage() + ").",
                    "Check the disk and your permission to read, then try again.", e);
        }
    }

    public String name() {
        return name;
    }

    /** A copy of the untouched content. */
    public byte[] bytes() {
        return bytes.clone();
    }

    public InputStream stream() {
        return new ByteArrayInputStream(bytes);
    }

    /**
     * The content as text, without a byte order mark.
     *
     * @throws ReadException when it is empty, or not UTF-8 text, with the line
     */
    public String text() throws ReadException {
        if (bytes.length > 1 && ((bytes[0] & 0xFF) == 0xFE && (bytes[1] & 0xFF) == 0xFF
                || (bytes[0] & 0xFF) == 0xFF && (bytes[1] & 0xFF) == 0xFE)) {
            throw refuse(1, "the text is in UTF-16.", "Save it as plain text in UTF-8 and choose it again.");
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        String text;
        try {
            text = decoder.decode(in).toString();
        } catch (CharacterCodingException e) {
            throw refuse(lineAt(in.position()), "this is not text (or not in UTF-8).", RIGHT_FILE);
        }
        int nul = text.indexOf('\0');
        if (nul >= 0) {
            throw refuse(lineOf(text, nul), "this is not a text file.", RIGHT_FILE);
        }
        if (text.isBlank()) {
            throw refuse(0, "the file is empty.", RIGHT_FILE);
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    public ReadException refuse(int line, String what, String whatToDo) {
        return new ReadException(name, line, what, whatToDo);
    }

    public ReadException unknownFormat() {
        return refuse(1, "the file holds neither element sets in a known format nor Earth orientation.", RIGHT_FILE);
    }

    private int lineAt(int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            if (bytes[i] == '\n') {
                line++;
            }
        }
        return line;
    }

    private static int lineOf(String text, int index) {
        return 1 + (int) text.substring(0, index).chars().filter(c -> c == '\n').count();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SourceFile that && name.equals(that.name) && Arrays.equals(bytes, that.bytes);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + Arrays.hashCode(bytes);
    }

    @Override
    public String toString() {
        return name + " (" + bytes.length + " bytes)";
    }
}
