package org.straddle.store;

import java.io.IOException;

import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;

import org.straddle.words.Catalogue;

import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Reads XML from people we do not know. A document type declaration is refused outright, and with it every entity
 * that could fetch a file, call a server or grow without bound. The parser is the one of the Java runtime, so that
 * no other one on the class path can replace it with weaker manners.
 */
public final class HardenedXml {

    private static final Catalogue TEXTS = Catalogue.of(HardenedXml.class);

    private HardenedXml() {
    }

    /**
     * Parses with namespaces.
     *
     * @throws org.xml.sax.SAXParseException when the text is not well-formed or has a DOCTYPE, with line and column
     */
    public static void parse(InputSource source, DefaultHandler handler) throws SAXException, IOException {
        parser(true).parse(source, handler);
    }

    /** A new parser with the same manners, for one text after the other: to make one takes longer than to read a short text. */
    static SAXParser parser(boolean namespaces) throws SAXException {
        SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
        factory.setNamespaceAware(namespaces);
        factory.setValidating(false);
        factory.setXIncludeAware(false);
        try {
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            SAXParser parser = factory.newSAXParser();
            parser.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            parser.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
            return parser;
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(TEXTS.text("hardenedXml.xmlParserJava"), e);
        }
    }
}
