package org.straddle.exchange;

import java.io.IOException;

import org.straddle.store.HardenedXml;
import org.straddle.words.Catalogue;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/** Reads one file of XML and tells of whatever is wrong with it by its line. */
public abstract class XmlReading extends DefaultHandler {

    private static final Catalogue TEXTS = Catalogue.of(XmlReading.class);

    public static final String AGAIN = TEXTS.text("xmlReading.fetchFileAgain");

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
                    TEXTS.text("xmlReading.notWellFormed", "reason", e.getMessage()), AGAIN, e);
        } catch (SAXException | IOException e) {
            throw new ReadException(fileName, line(), TEXTS.text("xmlReading.fileCannotRead",
                    "reason", e.getMessage()), AGAIN, e);
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
