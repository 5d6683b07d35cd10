package org.straddle.store;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

import javax.xml.parsers.SAXParser;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.IllegalValueException;
import org.eclipse.emf.ecore.xmi.XMIException;
import org.eclipse.emf.ecore.xmi.XMLHelper;
import org.eclipse.emf.ecore.xmi.XMLLoad;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.SAXXMIHandler;
import org.eclipse.emf.ecore.xmi.impl.XMILoadImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.straddle.words.Catalogue;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * One file of an event as objects. Reads with the hardened parser and stops at the first thing it does not know,
 * because going on would lose that thing at the next save. Writes the same bytes for the same objects on every
 * machine: UTF-8, line feeds, no time stamp.
 */
final class EventResource extends XMIResourceImpl {

    private static final Catalogue TEXTS = Catalogue.of(EventResource.class);

    /** Short lines keep the differences between two versions of a file readable. */
    private static final Map<String, Object> WRITING = Map.of(XMLResource.OPTION_ENCODING, "UTF-8",
            Resource.OPTION_LINE_DELIMITER, "\n", XMLResource.OPTION_LINE_WIDTH, 100);

    private static final int LONGEST_QUOTE = 60;

    /** Features of an older format that are left out. */
    private Set<String> retired = Set.of();

    /** Names of features in an older format, and those of today. */
    private Map<String, String> renamed = Map.of();

    /** What a file of these objects holds, while nothing among them changed; null when that is not known. */
    private byte[] known;

    EventResource(URI uri) {
        super(uri);
    }

    String name() {
        return Layout.name(getURI());
    }

    void read(byte[] bytes) throws EventFolderException {
        setIntrinsicIDToEObjectMap(new HashMap<>());
        retired = Migration.retired(bytes);
        renamed = Migration.renamed(bytes);
        try {
            load(new ByteArrayInputStream(bytes), Map.of());
        } catch (Refusal e) {
            XMIException why = e.why;
            throw new EventFolderException(TEXTS.text("eventResource.entryCannotRead",
                    "plain", plain(why)), name(), Math.max(0, why.getLine()),
                    Math.max(0, why.getColumn()), TEXTS.text("eventResource.correctPlaceNamed"), why);
        } catch (IOException | RuntimeException e) {
            throw EventFolderException.causedBy(e, TEXTS.text("eventResource.fileDamagedHolds"), name(),
                    TEXTS.text("diskFiles.restoreFileFrom"));
        } finally {
            setIntrinsicIDToEObjectMap(null);
        }
    }

    /** The objects are just what these bytes say: until one of them changes they need not be written again. */
    void keep(byte[] bytes) {
        known = bytes;
        setTrackingModification(true);
        setModified(false);
    }

    /** A name that others go by has changed, though perhaps nothing in here. */
    void forget() {
        known = null;
    }

    /** The bytes of now. @throws EventFolderException when a value is beyond its limits */
    byte[] bytes() throws EventFolderException {
        if (known == null || isModified()) {
            Limits.require(this);
            keep(write());
        }
        return known;
    }

    byte[] write() throws EventFolderException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            save(out, WRITING);
        } catch (IOException | RuntimeException e) {
            throw EventFolderException.causedBy(e, TEXTS.text("eventResource.objectsCannotWritten",
                    "reason", e.getMessage()), name(),
                    TEXTS.text("eventResource.undoLastChange"));
        }
        return out.toByteArray();
    }

    /** The framework's words without its class names and its copy of the place. */
    private static String plain(XMIException why) {
        if (why instanceof IllegalValueException wrong && wrong.getFeature() != null) {
            String value = String.valueOf(wrong.getValue());
            return TEXTS.text("eventResource.value",
                    "value", value.length() > LONGEST_QUOTE ? value.substring(0, LONGEST_QUOTE) + "…" : value,
                    "feature", wrong.getFeature().getName());
        }
        String message = why.getMessage() == null ? why.toString() : why.getMessage();
        return message.replaceAll("\\s*\\(event:[^)]*\\)\\s*$", "").replaceAll("\\b(?:[a-z]+\\.)+(?=[A-Z])", "");
    }

    @Override
    protected XMLLoad createXMLLoad() {
        return new Loading(createXMLHelper(), retired, renamed);
    }

    private static final class Loading extends XMILoadImpl {

        private final Set<String> retired;
        private final Map<String, String> renamed;

        Loading(XMLHelper helper, Set<String> retired, Map<String, String> renamed) {
            super(helper);
            this.retired = retired;
            this.renamed = renamed;
        }

        @Override
        protected SAXParser makeParser() throws SAXException {
            return ((EventResourceSet) resource.getResourceSet()).parser();
        }

        @Override
        protected DefaultHandler makeDefaultHandler() {
            return new SAXXMIHandler(resource, helper, options) {
                @Override
                public void error(XMIException e) {
                    throw new Refusal(e);
                }

                @Override
                protected void handleFeature(String prefix, String name) {
                    super.handleFeature(prefix, renamed.getOrDefault(name, name));
                }

                @Override
                protected void setAttribValue(EObject object, String name, String value) {
                    super.setAttribValue(object, renamed.getOrDefault(name, name), value);
                }

                @Override
                protected void handleUnknownFeature(String prefix, String name, boolean isElement, EObject object, String value) {
                    if (isElement && retired.contains(name)) {
                        // The framework skips what has this type.
                        types.push(ERROR_TYPE);
                    } else {
                        super.handleUnknownFeature(prefix, name, isElement, object, value);
                    }
                }
            };
        }
    }

    private static final class Refusal extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private final XMIException why;

        Refusal(XMIException why) {
            super(why);
            this.why = why;
        }
    }
}
