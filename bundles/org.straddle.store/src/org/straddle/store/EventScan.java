package org.straddle.store;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * Reads all files of an event, from the references of {@value Layout#EVENT} on, and looks at them as XML before any
 * of them becomes an object: format, size, entities, references that lead nowhere or out of the folder, identities
 * given twice. The modelling framework would find some of this later, but without line and column, and would go and
 * fetch whatever a reference names.
 */
final class EventScan {

    private final EventFiles files;
    private final Map<String, byte[]> found = new LinkedHashMap<>();
    private final Map<String, ScannedFile> scans = new HashMap<>();
    private final Deque<String> waiting = new ArrayDeque<>();

    private EventScan(EventFiles files) {
        this.files = files;
    }

    /** @return the bytes of every file that belongs to the event, by name; the event's own file is the first */
    static Map<String, byte[]> scan(EventFiles files) throws EventFolderException {
        return new EventScan(files).run();
    }

    private Map<String, byte[]> run() throws EventFolderException {
        byte[] event = files.read(Layout.EVENT);
        if (event == null) {
            throw EventFolderException.of("there is no such file, so this folder is not an event.", Layout.EVENT,
                    "Choose the folder that holds an " + Layout.EVENT + " file.");
        }
        take(Layout.EVENT, event);
        while (!waiting.isEmpty()) {
            follow(scans.get(waiting.remove()));
        }
        refuseLostTargets();
        refuseTwins();
        return found;
    }

    private void take(String name, byte[] bytes) throws EventFolderException {
        found.put(name, bytes);
        ScannedFile scan = new ScannedFile(name);
        try {
            HardenedXml.parse(new InputSource(new ByteArrayInputStream(bytes)), scan);
        } catch (ScannedFile.Refusal e) {
            throw e.refusal();
        } catch (SAXParseException e) {
            throw new EventFolderException("this is not well-formed XML, or forbidden here: " + e.getMessage(), name,
                    e.getLineNumber(), e.getColumnNumber(), "Restore the file from a copy, or correct the place named.",
                    e);
        } catch (SAXException | IOException | RuntimeException e) {
            throw EventFolderException.causedBy(e, "the file is damaged: it is no text in UTF-8, or breaks off.", name,
                    "Restore the file from a copy.");
        }
        scans.put(name, scan);
        waiting.add(name);
    }

    private void follow(ScannedFile scan) throws EventFolderException {
        for (ScannedFile.Reference reference : scan.references()) {
            String target = reference.targetFile();
            if (!scans.containsKey(target)) {
                byte[] bytes = files.read(target);
                if (bytes == null) {
                    throw reference.refuse("it refers to " + target + ", which is missing.",
                            "Restore " + target + " from a copy, or remove the entry that refers to it.");
                }
                take(target, bytes);
            }
        }
    }

    private void refuseLostTargets() throws EventFolderException {
        for (ScannedFile scan : scans.values()) {
            for (ScannedFile.Reference reference : scan.references()) {
                if (!scans.get(reference.targetFile()).identities().containsKey(reference.targetId())) {
                    throw reference.refuse("it refers to " + reference.targetId() + " in " + reference.targetFile()
                            + ", which is not there.",
                            "Restore " + reference.targetFile() + " from a copy, or remove the entry that refers to it.");
                }
            }
        }
    }

    private void refuseTwins() throws EventFolderException {
        Map<String, String> owners = new HashMap<>();
        for (ScannedFile scan : scans.values()) {
            for (Map.Entry<String, int[]> identity : scan.identities().entrySet()) {
                String other = owners.putIfAbsent(identity.getKey(), scan.name());
                if (other != null) {
                    throw new EventFolderException("the id " + identity.getKey() + " is given a second time; " + other
                            + " has it too.", scan.name(), identity.getValue()[0], identity.getValue()[1],
                            "One of the two files is a copy of the other: remove the copy from " + Layout.EVENT + ".");
                }
            }
        }
    }
}
