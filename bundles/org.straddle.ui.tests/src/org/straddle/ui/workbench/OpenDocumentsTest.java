package org.straddle.ui.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Events that the system asks for, before and after there is a window. */
class OpenDocumentsTest {

    @TempDir
    Path temp;

    @Test
    void waitsForTheWindowAndOpensOnlyEvents() throws IOException {
        Path event = Files.createDirectory(temp.resolve("a rove"));
        Path file = Files.writeString(event.resolve("event.straddle"), "");
        List<Path> opened = new ArrayList<>();
        OpenDocuments documents = new OpenDocuments();
        documents.asked(file.toString());
        documents.openWith(opened::add);
        assertEquals(List.of(event), opened, "asked for before there was a window");
        documents.asked(event.toString());
        assertEquals(List.of(event, event), opened, "the folder");
        documents.asked(temp.resolve("a letter.txt").toString());
        documents.asked(temp.toString());
        documents.asked(null);
        documents.asked("\0");
        assertEquals(2, opened.size(), "nothing else");
    }
}
