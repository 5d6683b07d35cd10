package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;

class TableFormatTest {

    private final Table table = new Table(Table.column("site", "Site"), Table.column("squares", "Squares"),
            Table.column("peakDeg", "peak°"))
            .row("Gate, north", List.of("HP94", "IP04"), 7.25).row("Bridge \"b\"\nlow", List.of("IP04"), 61.0);

    private String printed(TableFormat format) {
        StringWriter out = new StringWriter();
        PrintWriter writer = new PrintWriter(out);
        format.print(table, writer);
        writer.flush();
        return out.toString().replace("\r\n", "\n");
    }

    @Test
    void aTableAlignsItsColumnsAndKeepsARowOnALine() {
        assertEquals("""
                Site            Squares    peak°
                --------------  ---------  -----
                Gate, north     HP94 IP04   7.25
                Bridge "b" low  IP04          61
                """, printed(TableFormat.table));
    }

    @Test
    void csvQuotesAsRfc4180Says() {
        assertEquals("""
                site,squares,peakDeg
                "Gate, north",HP94 IP04,7.25
                "Bridge ""b""
                low",IP04,61
                """, printed(TableFormat.csv));
    }

    @Test
    void jsonKeepsNumbersAndLists() throws IOException {
        List<String> tokens = new ArrayList<>();
        try (JsonParser json = new JsonFactory().createParser(printed(TableFormat.json))) {
            for (JsonToken token = json.nextToken(); token != null; token = json.nextToken()) {
                tokens.add(token.isScalarValue() ? token + " " + json.getText() : json.getText());
            }
        }
        assertEquals(List.of("[",
                "{", "site", "VALUE_STRING Gate, north", "squares", "[", "VALUE_STRING HP94", "VALUE_STRING IP04", "]",
                "peakDeg", "VALUE_NUMBER_FLOAT 7.25", "}",
                "{", "site", "VALUE_STRING Bridge \"b\"\nlow", "squares", "[", "VALUE_STRING IP04", "]",
                "peakDeg", "VALUE_NUMBER_FLOAT 61.0", "}", "]"), tokens);
    }

    @Test
    void noRowsStillPrintTheColumns() {
        StringWriter out = new StringWriter();
        PrintWriter writer = new PrintWriter(out);
        TableFormat.csv.print(new Table(Table.column("a", "A"), Table.column("b", "B")), writer);
        writer.flush();
        assertEquals("a,b\r\n", out.toString());
    }
}
