package org.straddle.exchange;

import java.io.StringWriter;

import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

import org.straddle.model.InertText;

/** A document of XML 1.0 as it grows, written by StAX: an element a line, those within others indented. */
public final class XmlText {

    private static final int LAST_OF_ASCII = 0x7E;

    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter xml;
    private int depth;

    /** Begins the document and its outermost element. */
    public XmlText(String root, String... namesAndValues) {
        try {
            xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            xml.writeStartDocument("UTF-8", "1.0");
            begin(root, namesAndValues);
        } catch (XMLStreamException e) {
            throw inMemory(e);
        }
    }

    /** @param namesAndValues attributes: name, value, name, value … */
    public void begin(String name, String... namesAndValues) {
        try {
            newLine();
            xml.writeStartElement(name);
            attributes(namesAndValues);
            depth++;
        } catch (XMLStreamException e) {
            throw inMemory(e);
        }
    }

    /** An element that holds nothing but its attributes. */
    public void empty(String name, String... namesAndValues) {
        try {
            newLine();
            xml.writeEmptyElement(name);
            attributes(namesAndValues);
        } catch (XMLStreamException e) {
            throw inMemory(e);
        }
    }

    /** An element that holds text. What acts ({@link InertText}) becomes a reference to its character where XML has it. */
    public void element(String name, String value) {
        try {
            newLine();
            xml.writeStartElement(name);
            for (int at = 0; at < value.length(); at = value.offsetByCodePoints(at, 1)) {
                write(value.codePointAt(at));
            }
            xml.writeEndElement();
        } catch (XMLStreamException e) {
            throw inMemory(e);
        }
    }

    /** Ends what {@link #begin} began. */
    public void finish() {
        try {
            depth--;
            newLine();
            xml.writeEndElement();
        } catch (XMLStreamException e) {
            throw inMemory(e);
        }
    }

    /** Ends the outermost element; the whole. Call it once. */
    public String text() {
        try {
            finish();
            xml.writeCharacters("\n");
            xml.close();
            return text.toString();
        } catch (XMLStreamException e) {
            throw inMemory(e);
        }
    }

    private void write(int character) throws XMLStreamException {
        boolean asReference = character > LAST_OF_ASCII && InertText.acts(character) || character == '\r';
        if (asReference) {
            xml.writeEntityRef("#" + character);
        } else {
            xml.writeCharacters(Character.toString(character));
        }
    }

    private void attributes(String... namesAndValues) throws XMLStreamException {
        for (int i = 0; i + 1 < namesAndValues.length; i += 2) {
            xml.writeAttribute(namesAndValues[i], namesAndValues[i + 1]);
        }
    }

    private void newLine() throws XMLStreamException {
        xml.writeCharacters("\n" + "  ".repeat(depth));
    }

    private static IllegalStateException inMemory(XMLStreamException e) {
        return new IllegalStateException("text in memory can always be written", e);
    }
}
