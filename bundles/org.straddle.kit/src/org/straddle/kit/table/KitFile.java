package org.straddle.kit.table;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.straddle.exchange.CsvCell;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.sites.SourceTable;
import org.straddle.model.KitItem;
import org.straddle.words.Catalogue;

/** Tables of kits as files: CSV as programs for tables write it, in the encodings and with the separators that they use. */
public final class KitFile {

    private static final Catalogue TEXTS = Catalogue.of(KitFile.class);

    private static final Charset WINDOWS = Charset.forName("windows-1252");

    private KitFile() {
    }

    /** @throws ReadException when it cannot be read or is no table */
    public static SourceTable read(Path path) throws ReadException {
        SourceFile file = SourceFile.read(path);
        return read(file.name(), file.bytes());
    }

    /** UTF-8, UTF-16 with its mark, else Windows-1252, which is said. A first line such as {@code sep=;} is skipped. */
    public static SourceTable read(String name, byte[] bytes) throws ReadException {
        List<String> remarks = new ArrayList<>();
        String text = decoded(bytes, remarks).replaceFirst("(?i)^\uFEFF?\"?sep=.\"?(?=\\R)", "");
        SourceTable table = tableOf(name, text);
        remarks.addAll(table.remarks());
        return new SourceTable(table.name(), table.columns(), table.rows(), remarks);
    }

    /** What to do about a bad table of sites is no help to somebody who has kits. */
    private static SourceTable tableOf(String name, String text) throws ReadException {
        try {
            return SourceTable.read(name, text.getBytes(StandardCharsets.UTF_8));
        } catch (ReadException e) {
            throw new ReadException(e.file(), e.line(), e.what(), TEXTS.text("file.correct"), e);
        }
    }

    private static String decoded(byte[] bytes, List<String> remarks) {
        if (bytes.length > 1 && (bytes[0] & 0xFF) + (bytes[1] & 0xFF) == 0xFE + 0xFF && (bytes[0] & 0xFE) == 0xFE) {
            return new String(bytes, StandardCharsets.UTF_16);
        }
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            remarks.add(TEXTS.text("file.windows"));
            return new String(bytes, WINDOWS);
        }
    }

    /** A table that can be read back. */
    public static String write(List<KitItem> items) {
        StringWriter text = new StringWriter();
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            printer.printRecord(Stream.of(KitColumn.values()).map(KitColumn::heading));
            for (KitItem item : items) {
                printer.printRecord(Stream.of(KitColumn.values()).map(column -> CsvCell.of(column.print(item))));
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }
}
