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

import org.straddle.words.Catalogue;

/** A file from elsewhere, read once: what is understood and what is kept are then the same bytes. */
public final class SourceFile {

    private static final Catalogue TEXTS = Catalogue.of(SourceFile.class);

    /** The public catalogue with all objects is smaller in every format; above it a file is not a set of elements. */
    public static final int LARGEST_BYTES = 64 << 20;

    private static final String RIGHT_FILE = TEXTS.text("sourceFile.chooseTextFile");

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
            throw new ReadException(name, 0, Files.exists(path) ? TEXTS.text("mapSource.notPlainFile")
                    : TEXTS.text("mapSource.noSuchFile"),
                    RIGHT_FILE);
        }
        try (InputStream in = Files.newInputStream(path)) {
            byte[] bytes = Files.size(path) > LARGEST_BYTES ? null : in.readNBytes(LARGEST_BYTES + 1);
            if (bytes == null || bytes.length > LARGEST_BYTES) {
                throw new ReadException(name, 0, TEXTS.text("mapSource.fileLargerThan",
                        "largestBytes", (LARGEST_BYTES >> 20)),
                        TEXTS.text("sourceFile.chooseFileFewer"));
            }
            return new SourceFile(name, bytes);
        } catch (ReadException e) {
            throw e;
        } catch (IOException e) {
            throw new ReadException(name, 0, TEXTS.text("sourceFile.fileCannotRead", "reason", e.getMessage()),
                    TEXTS.text("mapSource.checkDiskYour"), e);
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
            throw refuse(1, TEXTS.text("sourceFile.textUtf"), TEXTS.text("sourceFile.saveAsPlain"));
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        String text;
        try {
            text = decoder.decode(in).toString();
        } catch (CharacterCodingException e) {
            throw refuse(lineAt(in.position()), TEXTS.text("sourceFile.notTextNot"), RIGHT_FILE);
        }
        int nul = text.indexOf('\0');
        if (nul >= 0) {
            throw refuse(lineOf(text, nul), TEXTS.text("sourceFile.notTextFile"), RIGHT_FILE);
        }
        if (text.isBlank()) {
            throw refuse(0, TEXTS.text("sourceFile.fileEmpty"), RIGHT_FILE);
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    public ReadException refuse(int line, String what, String whatToDo) {
        return new ReadException(name, line, what, whatToDo);
    }

    public ReadException unknownFormat() {
        return refuse(1, TEXTS.text("sourceFile.fileHoldsNeither"), RIGHT_FILE);
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
        return TEXTS.text("sourceFile.bytes", "name", name, "length", bytes.length);
    }
}
