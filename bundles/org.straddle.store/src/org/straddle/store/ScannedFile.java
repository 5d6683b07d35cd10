package org.straddle.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

import org.eclipse.emf.common.util.URI;
import org.straddle.words.Catalogue;
import org.xml.sax.Attributes;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/** One file of an event as XML: the identities it gives and the references it makes to other files, with places. */
final class ScannedFile extends DefaultHandler {

    private static final Catalogue TEXTS = Catalogue.of(ScannedFile.class);

    /** Far beyond any event, far below what fills the memory. */
    private static final int MOST_ELEMENTS = 1_000_000;
    private static final int DEEPEST = 100;

    private static final String XMI = "http://www.omg.org/XMI";
    private static final String XSI = "http://www.w3.org/2001/XMLSchema-instance";

    /** Where a file refers to an object in another one. */
    record Reference(String file, int line, int column, String targetFile, String targetId) {

        EventFolderException refuse(String what, String whatToDo) {
            return new EventFolderException(what, file, line, column, whatToDo);
        }
    }

    /** Carries a refusal out of the parser. */
    static final class Refusal extends SAXException {

        private static final long serialVersionUID = 1L;

        private final EventFolderException refusal;

        Refusal(EventFolderException refusal) {
            super(refusal);
            this.refusal = refusal;
        }

        EventFolderException refusal() {
            return refusal;
        }
    }

    private final String name;
    private final Map<String, int[]> identities = new LinkedHashMap<>();
    private final List<Reference> references = new ArrayList<>();
    private Locator locator;
    private boolean ours;
    private int depth;
    private int elements;

    ScannedFile(String name) {
        this.name = name;
    }

    String name() {
        return name;
    }

    /** Line and column by identity. */
    Map<String, int[]> identities() {
        return identities;
    }

    List<Reference> references() {
        return references;
    }

    @Override
    public void setDocumentLocator(Locator locator) {
        this.locator = locator;
    }

    @Override
    public void startPrefixMapping(String prefix, String uri) throws SAXException {
        OptionalInt format = Format.of(uri);
        if (format.isPresent() && format.getAsInt() > Format.CURRENT) {
            throw refuse(TEXTS.text("scannedFile.fileWrittenNewer", "asInt", format.getAsInt(), "current", Format.CURRENT),
                    TEXTS.text("scannedFile.openEventStraddle"));
        }
        if (format.isPresent()) {
            ours = true;
        } else if (!uri.equals(XMI) && !uri.equals(XSI) && !uri.isEmpty()) {
            throw refuse(TEXTS.text("scannedFile.holdsThingsUnknown", "uri", uri), TEXTS.text("diskFiles.restoreFileFrom"));
        }
    }

    @Override
    public void startElement(String uri, String localName, String qName, Attributes attributes) throws SAXException {
        if (depth == 0 && !ours && !localName.equals("XMI")) {
            throw refuse(TEXTS.text("scannedFile.xmlNotFrom"), TEXTS.text("diskFiles.restoreFileFrom"));
        }
        if (++elements > MOST_ELEMENTS || ++depth > DEEPEST) {
            throw refuse(TEXTS.text("scannedFile.eventSoLarge"),
                    TEXTS.text("diskFiles.restoreFileFrom"));
        }
        String id = attributes.getValue("", "id");
        if (id != null && identities.put(id, new int[] {line(), column()}) != null) {
            throw refuse(TEXTS.text("scannedFile.idGivenTwice", "id", id),
                    TEXTS.text("scannedFile.removeSecondTwo"));
        }
        String href = attributes.getValue("", "href");
        if (href != null) {
            references.add(reference(href));
        }
    }

    @Override
    public void endElement(String uri, String localName, String qName) {
        depth--;
    }

    @Override
    public void error(SAXParseException e) throws SAXException {
        throw e;
    }

    private Reference reference(String href) throws Refusal {
        try {
            URI target = URI.createURI(href).resolve(Layout.uri(name));
            String file = target.segmentCount() == 0 ? "" : Layout.name(target);
            if (Layout.uri(file).equals(target.trimFragment()) && Layout.isModelFile(file) && target.hasFragment()) {
                return new Reference(name, line(), column(), file, target.fragment());
            }
        } catch (IllegalArgumentException e) {
            // Not even an address: refused like one that leads elsewhere.
        }
        throw refuse(TEXTS.text("scannedFile.refersWhichNot", "href", href),
                TEXTS.text("scannedFile.removeEntryRestore"));
    }

    private Refusal refuse(String what, String whatToDo) {
        return new Refusal(new EventFolderException(what, name, line(), column(), whatToDo));
    }

    private int line() {
        return locator == null ? 0 : Math.max(0, locator.getLineNumber());
    }

    private int column() {
        return locator == null ? 0 : Math.max(0, locator.getColumnNumber());
    }
}
