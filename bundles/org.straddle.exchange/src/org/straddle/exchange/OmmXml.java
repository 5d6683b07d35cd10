package org.straddle.exchange;

import java.io.IOException;

import org.straddle.store.HardenedXml;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Messages as XML: one {@code omm}, or an {@code ndm} that holds many. Elements count by their names alone, because
 * files in public use come with and without a namespace.
 */
final class OmmXml extends DefaultHandler {

    private static final int DEEPEST = 32;
    private static final int LONGEST_VALUE = 10_000;

    private final SourceFile source;
    private final OmmMessages messages = new OmmMessages();
    private final StringBuilder text = new StringBuilder();
    private Locator locator;
    private int depth;
    private OmmMessage message;
    private String unit = "";
    private int line;

    private OmmXml(SourceFile source) {
        this.source = source;
    }

    static ElementFile read(SourceFile source) throws ReadException {
        OmmXml reading = new OmmXml(source);
        try {
            HardenedXml.parse(new InputSource(source.stream()), reading);
        } catch (XmlRefusal e) {
            throw e.refusal();
        } catch (SAXParseException e) {
            throw new ReadException(source.name(), Math.max(0, e.getLineNumber()),
                    "this is not well-formed XML, or forbidden here: " + e.getMessage(),
                    "Fetch the file again from its source.", e);
        } catch (SAXException | IOException e) {
            throw new ReadException(source.name(), 0, "the file cannot be read as XML: " + e.getMessage(),
                    "Fetch the file again from its source.", e);
        }
        return reading.messages.toFile(source, ElementFormat.OMM_XML);
    }

    @Override
    public void setDocumentLocator(Locator documentLocator) {
        locator = documentLocator;
    }

    @Override
    public void startElement(String uri, String localName, String qName, Attributes attributes) throws SAXException {
        if (depth == 0 && !localName.equals("omm") && !localName.equals("ndm")) {
            throw refuse("the XML holds no orbit mean-elements messages, but <" + localName + ">.",
                    "Choose a file with OMM messages.");
        }
        if (++depth > DEEPEST) {
            throw refuse("no message is nested so deeply.", "Choose a file with OMM messages.");
        }
        if (localName.equals("omm")) {
            begin(attributes);
        }
        text.setLength(0);
        line = locator.getLineNumber();
        unit = attributes.getValue("units") == null ? "" : attributes.getValue("units");
    }

    private void begin(Attributes attributes) throws SAXException {
        if (message != null) {
            throw refuse("a message within a message.", "Fetch the file again from its source.");
        }
        String version = attributes.getValue("version");
        try {
            OmmKvn.requireReadable(source, locator.getLineNumber(), version == null ? "unknown" : version);
        } catch (ReadException e) {
            throw new XmlRefusal(e);
        }
        message = new OmmMessage(source, locator.getLineNumber(), true);
    }

    @Override
    public void characters(char[] characters, int start, int length) throws SAXException {
        if (text.length() + length > LONGEST_VALUE) {
            throw refuse("a value of more than " + LONGEST_VALUE + " characters.", "Fetch the file again from its source.");
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
                message.put(localName, text.toString(), unit, line);
            }
        } catch (ReadException e) {
            throw new XmlRefusal(e);
        }
        text.setLength(0);
        unit = "";
    }

    @Override
    public void error(SAXParseException e) throws SAXException {
        throw e;
    }

    private XmlRefusal refuse(String what, String whatToDo) {
        return new XmlRefusal(source.refuse(locator.getLineNumber(), what, whatToDo));
    }
}
