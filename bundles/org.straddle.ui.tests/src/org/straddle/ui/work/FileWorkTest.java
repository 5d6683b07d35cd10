package org.straddle.ui.work;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the user reads when a file cannot be written: what, where, and what to do. */
class FileWorkTest {

    @TempDir
    private Path folder;

    private String told(Path file) {
        IOException failure = assertThrows(IOException.class, () -> Files.write(file, new byte[] {1}));
        return FileWork.sentence("Writing the map", failure);
    }

    @Test
    void aMissingFolderIsNamed() {
        Path file = folder.resolve("none").resolve("map.png");
        String told = told(file);
        assertTrue(told.startsWith("Writing the map failed: " + file + " is not there, or its folder is not."), told);
        assertTrue(told.contains("choose another one"), told);
    }

    @Test
    void aFolderInPlaceOfTheFileIsNamed() throws IOException {
        Path file = Files.createDirectory(folder.resolve("map.png"));
        Files.writeString(file.resolve("kept"), "kept");
        String told = told(file);
        assertTrue(told.startsWith("Writing the map failed: " + file), told);
        assertTrue(Files.exists(file.resolve("kept")));
    }

    @Test
    void whoMayNotWriteIsTold() {
        String told = FileWork.sentence("Writing the map", new AccessDeniedException("/media/map.png"));
        assertTrue(told.contains("You may not read or write /media/map.png."), told);
    }

    @Test
    void aFailureWithoutWordsIsNotNull() {
        assertTrue(FileWork.sentence("Writing the map", new IOException()).contains("failed: IOException"));
    }
}
