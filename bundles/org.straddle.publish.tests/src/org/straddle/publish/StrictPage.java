package org.straddle.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;

import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** A page read strictly: it is HTML that is also well-formed XML, and keeps what HTML asks for beyond that. */
final class StrictPage {

    private static final Set<String> ELEMENTS = Set.of("html", "head", "meta", "title", "style", "body", "header",
            "main", "section", "footer", "div", "h1", "h2", "h3", "h4", "p", "strong", "a", "ul", "li", "table",
            "caption", "thead", "tbody", "tr", "th", "td", "span", "svg", "defs", "pattern", "rect", "path", "circle",
            "text");

    final Document document;

    StrictPage(String html) throws Exception {
        assertTrue(html.startsWith("<!DOCTYPE html>\n<html lang=\"en\">"), html.substring(0, 60));
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setExpandEntityReferences(false);
        DocumentBuilder builder = factory.newDocumentBuilder();
        builder.setErrorHandler(new Strict());
        document = builder.parse(new InputSource(new StringReader(html)));
        Set<String> ids = new HashSet<>();
        for (Element element : elements("*")) {
            assertTrue(ELEMENTS.contains(element.getTagName()), "unexpected <" + element.getTagName() + ">");
            assertFalse(element.hasAttribute("id") && !ids.add(element.getAttribute("id")), "an id twice");
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                assertFalse(element.getAttributes().item(i).getNodeName().startsWith("on"), "a script attribute");
            }
        }
        elements("th").forEach(th -> assertTrue(Set.of("col", "row", "rowgroup").contains(th.getAttribute("scope"))));
        elements("table").forEach(table -> assertEquals("caption", firstElement(table).getTagName()));
        elements("table").forEach(StrictPage::assertRowsAreFull);
        assertEquals(1, elements("h1").size());
        assertFalse(text("title").isBlank());
    }

    /** Counts cells with their spans: every row of a table is as wide as its first. */
    private static void assertRowsAreFull(Element table) {
        List<Element> rows = elements(table, "tr");
        int[] widths = new int[rows.size()];
        for (int r = 0; r < rows.size(); r++) {
            for (int i = 0; i < rows.get(r).getChildNodes().getLength(); i++) {
                if (rows.get(r).getChildNodes().item(i) instanceof Element cell) {
                    for (int below = 0; below < span(cell, "rowspan"); below++) {
                        widths[r + below] += span(cell, "colspan");
                    }
                }
            }
        }
        for (int width : widths) {
            assertEquals(widths[0], width, "cells of a row under " + firstElement(table).getTextContent());
        }
    }

    private static int span(Element cell, String attribute) {
        return cell.hasAttribute(attribute) ? Integer.parseInt(cell.getAttribute(attribute)) : 1;
    }

    private static Element firstElement(Element parent) {
        for (int i = 0; i < parent.getChildNodes().getLength(); i++) {
            if (parent.getChildNodes().item(i) instanceof Element element) {
                return element;
            }
        }
        throw new AssertionError("<" + parent.getTagName() + "> is empty");
    }

    List<Element> elements(String name) {
        return elements(document.getDocumentElement(), name);
    }

    private static List<Element> elements(Element root, String name) {
        List<Element> list = new ArrayList<>();
        NodeList nodes = root.getElementsByTagName(name);
        for (int i = 0; i < nodes.getLength(); i++) {
            list.add((Element) nodes.item(i));
        }
        return list;
    }

    /** What a reader reads in all elements of a name, with single blanks. */
    String text(String name) {
        StringBuilder text = new StringBuilder();
        elements(name).forEach(element -> text.append(element.getTextContent()).append('\n'));
        return text.toString().replaceAll("[ \\n]+", " ").strip();
    }

    private static final class Strict implements ErrorHandler {
        @Override
        public void warning(SAXParseException e) throws SAXParseException {
            throw e;
        }

        @Override
        public void error(SAXParseException e) throws SAXParseException {
            throw e;
        }

        @Override
        public void fatalError(SAXParseException e) throws SAXParseException {
            throw e;
        }
    }
}
