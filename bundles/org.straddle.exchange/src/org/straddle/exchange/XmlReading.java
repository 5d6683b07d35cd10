package org.straddle.exchange;

import java.io.IOException;

import org.straddle.store.HardenedXml;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/** Reads one file of XML and tells of whatever is wrong with it by its line. */
public abstract class XmlReading extends DefaultHandler {

    public static final String AGAIN = "Fetch the file again from its source.";

    private final String fileName;
    private Locator locator;
    /** Of the last element that began: at the end of the file the parser knows no line. */
    private int lastLine = 1;

    public XmlReading(String fileName) {
        this.fileName = fileName;
    }

    public final void parse(InputSource in) throws ReadException {
        try {
            HardenedXml.parse(in, this);
        } catch (XmlRefusal e) {
            throw e.refusal();
        } catch (SAXParseException e) {
            throw new ReadException(fileName, e.getLineNumber() > 0 ? e.getLineNumber() : line(),
                    "this is not well-formed XML, or forbidden here: " + e.getMessage(), AGAIN, e);
        } catch (SAXException | IOException e) {
            throw new ReadException(fileName, line(), "the file cannot be read as XML: " + e.getMessage(), AGAIN, e);
        }
    }

    /** An element begins. Elements count by their local names. */
    protected abstract void begin(String localName, Attributes attributes) throws SAXException;

    /** 1 and up. */
    public final int line() {
        int here = locator == null ? 0 : locator.getLineNumber();
        return here > 0 ? here : lastLine;
    }

    @Override
    public final void startElement(String uri, String localName, String qName, Attributes attributes)
            throws SAXException {
        lastLine = line();
        begin(localName, attributes);
    }

    @Override
    public final void setDocumentLocator(Locator documentLocator) {
        locator = documentLocator;
    }

    @Override
    public final void error(SAXParseException e) throws SAXException {
        throw e;
    }
}
