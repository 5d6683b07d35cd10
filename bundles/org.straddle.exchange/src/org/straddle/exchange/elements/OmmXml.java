package org.straddle.exchange.elements;


import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.XmlReading;
import org.straddle.exchange.XmlRefusal;
import org.straddle.exchange.formats.FileFormat;
import org.straddle.words.Catalogue;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * Messages as XML: one {@code omm}, or an {@code ndm} that holds many. Elements count by their names alone, because
 * files in public use come with and without a namespace.
 */
final class OmmXml extends XmlReading {

    private static final Catalogue TEXTS = Catalogue.of(OmmXml.class);

    private static final int DEEPEST = 32;
    private static final int LONGEST_VALUE = 10_000;

    private final SourceFile source;
    private final OmmMessages messages = new OmmMessages();
    private final StringBuilder text = new StringBuilder();
    private int depth;
    private OmmMessage message;
    private String unit = "";
    private int valueLine;

    private OmmXml(SourceFile source) {
        super(source.name());
        this.source = source;
    }

    static ElementFile read(SourceFile source) throws ReadException {
        OmmXml reading = new OmmXml(source);
        reading.parse(new InputSource(source.stream()));
        return reading.messages.toFile(source, FileFormat.OMM_XML);
    }

    @Override
    protected void begin(String localName, Attributes attributes) throws SAXException {
        if (depth == 0 && !localName.equals("omm") && !localName.equals("ndm")) {
            throw refuse(TEXTS.text("ommXml.xmlHoldsOrbit", "localName", localName),
                    TEXTS.text("ommXml.chooseFileOmm"));
        }
        if (++depth > DEEPEST) {
            throw refuse(TEXTS.text("ommXml.messageNestedSo"), TEXTS.text("ommXml.chooseFileOmm"));
        }
        if (localName.equals("omm")) {
            beginMessage(attributes);
        }
        text.setLength(0);
        valueLine = line();
        unit = attributes.getValue("units") == null ? "" : attributes.getValue("units");
    }

    private void beginMessage(Attributes attributes) throws SAXException {
        if (message != null) {
            throw refuse(TEXTS.text("ommXml.messageWithinMessage"), AGAIN);
        }
        String version = attributes.getValue("version");
        try {
            OmmKvn.requireReadable(source, line(), version == null ? "unknown" : version);
        } catch (ReadException e) {
            throw new XmlRefusal(e);
        }
        message = new OmmMessage(source, line(), true);
    }

    @Override
    public void characters(char[] characters, int start, int length) throws SAXException {
        if (text.length() + length > LONGEST_VALUE) {
            throw refuse(TEXTS.text("ommXml.valueMoreThan", "longestValue", LONGEST_VALUE), AGAIN);
        }
        text.append(characters, start, length);
    }

    @Override
    public void endElement(String uri, String localName, String qName) throws SAXException {
        depth--;
        try {
            if (localName.equals("omm")) {
                messages.add(message);
                message = null;
            } else if (message != null) {
                message.put(localName, text.toString(), unit, valueLine);
            }
        } catch (ReadException e) {
            throw new XmlRefusal(e);
        }
        text.setLength(0);
        unit = "";
    }

    private XmlRefusal refuse(String what, String whatToDo) {
        return new XmlRefusal(source.refuse(line(), what, whatToDo));
    }
}
