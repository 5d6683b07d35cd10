package org.straddle.store;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

import javax.xml.parsers.SAXParser;

import org.straddle.words.Catalogue;

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

    private static final Catalogue TEXTS = Catalogue.of(EventScan.class);

    private final EventFiles files;
    private final Map<String, byte[]> found = new LinkedHashMap<>();
    private final Map<String, ScannedFile> scans = new HashMap<>();
    private final Deque<String> waiting = new ArrayDeque<>();

    private SAXParser parser;

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
            throw EventFolderException.of(TEXTS.text("eventScan.thereSuchFile"), Layout.EVENT,
                    TEXTS.text("eventFolder.chooseFolderHolds", "event", Layout.EVENT));
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
            parser = parser == null ? HardenedXml.parser(true) : parser;
            parser.parse(new InputSource(new ByteArrayInputStream(bytes)), scan);
        } catch (ScannedFile.Refusal e) {
            throw e.refusal();
        } catch (SAXParseException e) {
            throw new EventFolderException(TEXTS.text("eventScan.notWellFormed", "reason", e.getMessage()), name,
                    e.getLineNumber(), e.getColumnNumber(), TEXTS.text("eventScan.restoreFileFrom"),
                    e);
        } catch (SAXException | IOException | RuntimeException e) {
            throw EventFolderException.causedBy(e, TEXTS.text("eventScan.fileDamagedText"), name,
                    TEXTS.text("diskFiles.restoreFileFrom"));
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
                    throw reference.refuse(TEXTS.text("eventScan.refersWhichMissing", "target", target),
                            TEXTS.text("eventScan.restoreFromCopy", "target", target));
                }
                take(target, bytes);
            }
        }
    }

    private void refuseLostTargets() throws EventFolderException {
        for (ScannedFile scan : scans.values()) {
            for (ScannedFile.Reference reference : scan.references()) {
                if (!scans.get(reference.targetFile()).identities().containsKey(reference.targetId())) {
                    throw reference.refuse(TEXTS.text("eventScan.refersWhichNot", "targetId", reference.targetId(),
                            "targetFile", reference.targetFile()),
                            TEXTS.text("eventScan.restoreOrRemove", "targetFile", reference.targetFile()));
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
                    throw new EventFolderException(TEXTS.text("eventScan.idGivenSecond", "identity", identity.getKey(),
                            "other", other), scan.name(), identity.getValue()[0], identity.getValue()[1],
                            TEXTS.text("eventScan.oneTwoFiles", "event", Layout.EVENT));
                }
            }
        }
    }
}
