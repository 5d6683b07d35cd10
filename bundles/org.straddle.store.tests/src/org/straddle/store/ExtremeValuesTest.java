package org.straddle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Revision;
import org.straddle.model.StraddleFactory;

/**
 * Every attribute of the model with values at the ends of its type: refused once, when the event is opened, with file,
 * object, feature and what is allowed; and refused before they are saved.
 */
class ExtremeValuesTest {

    private static final Map<Class<?>, List<String>> EXTREMES = Map.of(
            double.class, List.of("NaN", "Infinity", "-Infinity", "1.7976931348623157E308", "-1.7976931348623157E308", "4.9E-324", "1e-320"),
            Double.class, List.of("NaN", "Infinity", "1.7976931348623157E308", "4.9E-324"),
            int.class, List.of("2147483647", "-2147483648"),
            java.time.Instant.class, List.of("+1000000000-12-31T23:59:59.999999999Z", "-1000000000-01-01T00:00:00Z", "0001-01-01T00:00:00Z"),
            java.time.LocalDate.class, List.of("+999999999-12-31", "-999999999-01-01"));

    @TempDir
    Path temp;
    private Path folder;

    @BeforeEach
    void createFullEvent() throws IOException {
        folder = temp.resolve("event");
        Event event = Example.event();
        fill(event);
        EventFolder.create(folder, event, FailingSteps.never()).close();
    }

    /** At least one object in every containment. */
    private static void fill(EObject object) {
        for (EReference part : object.eClass().getEAllContainments()) {
            if (!object.eIsSet(part)) {
                EObject made = EcoreUtil.create(part.getEReferenceType());
                if (made instanceof Identified identified) {
                    identified.setId(EcoreUtil.generateUUID());
                }
                if (part.isMany()) {
                    @SuppressWarnings("unchecked")
                    List<EObject> parts = (List<EObject>) object.eGet(part);
                    parts.add(made);
                } else {
                    object.eSet(part, made);
                }
            }
        }
        List.copyOf(object.eContents()).forEach(ExtremeValuesTest::fill);
    }

    /** The attribute of the first object that has it, written as somebody would who edits the file. */
    private void write(EObject object, EAttribute attribute, String value) throws IOException {
        Resource resource = object.eResource();
        Path file = folder.resolve(((EventResource) resource).name());
        object.eSet(attribute, attribute.isMany() ? List.of(EcoreUtil.createFromString(attribute.getEAttributeType(), value))
                : EcoreUtil.createFromString(attribute.getEAttributeType(), value));
        Files.write(file, ((EventResource) resource).write());
    }

    @Test
    void everyAttributeIsLookedAtWhenTheEventIsOpened() throws IOException {
        List<String> accepted = new ArrayList<>();
        TreeSet<String> tried = new TreeSet<>();
        List<EAttribute> attributes = new ArrayList<>();
        try (EventFolder first = EventFolder.openReadOnly(folder)) {
            List<EObject> all = new ArrayList<>(List.of(first.event()));
            first.event().eAllContents().forEachRemaining(all::add);
            for (EObject object : all) {
                for (EAttribute attribute : object.eClass().getEAllAttributes()) {
                    if (!attributes.contains(attribute)) {
                        attributes.add(attribute);
                        tryAll(object, attribute, accepted, tried);
                    }
                }
            }
        }
        assertEquals(List.of(), accepted);
        assertTrue(tried.size() > 100, "attributes tried: " + tried.size());
        assertTrue(tried.containsAll(List.of("Revision.number", "Policies.roadSpeedKmh", "BirdElements.epoch", "Region.outline",
                "Event.firstDay", "Photo.latitudeDeg")), tried.toString());
    }

    private void tryAll(EObject object, EAttribute attribute, List<String> accepted, TreeSet<String> tried) throws IOException {
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        if (type == boolean.class || attribute.getEAttributeType() instanceof EEnum || attribute.isID()
                || attribute.getName().equals("id")) {
            return;
        }
        String name = object.eClass().getName() + "." + attribute.getName();
        Path file = folder.resolve(((EventResource) object.eResource()).name());
        byte[] good = Files.readAllBytes(file);
        Object before = object.eGet(attribute);
        Object kept = attribute.isMany() ? List.copyOf((List<?>) before) : before;
        for (String extreme : type == String.class ? List.of("x".repeat(3_000_000)) : EXTREMES.get(type)) {
            write(object, attribute, extreme);
            try {
                EventFolder.openReadOnly(folder);
                accepted.add(name + " = " + extreme);
            } catch (EventFolderException e) {
                assertTrue(e.getMessage().lines().count() <= 2 && e.getMessage().length() < 600, e.getMessage());
                assertEquals(((EventResource) object.eResource()).name(), e.file(), e.getMessage());
                assertTrue(e.what().contains(attribute.getName()) && e.what().contains("allowed"), e.getMessage());
            }
        }
        object.eSet(attribute, kept);
        Files.write(file, good);
        tried.add(attribute.getEContainingClass().getName() + "." + attribute.getName());
    }

    @Test
    void anOutlineOfNestedCollectionsIsRefused() throws IOException {
        try (EventFolder event = EventFolder.open(folder)) {
            event.event().getRegions().get(0).setOutline("GEOMETRYCOLLECTION (".repeat(50_000) + ")".repeat(50_000));
            EventFolderException e = assertThrows(EventFolderException.class, event::save);
            assertTrue(e.what().contains("nested 50000 deep; allowed are 4"), e.getMessage());
        }
    }

    @Test
    void whatCouldNotBeOpenedAgainIsNotSaved() throws IOException {
        Map<String, String> before = FolderContent.of(folder);
        try (EventFolder event = EventFolder.open(folder)) {
            Revision revision = StraddleFactory.eINSTANCE.createRevision();
            revision.setNumber(Integer.MAX_VALUE);
            event.event().getRevisions().add(revision);
            EventFolderException e = assertThrows(EventFolderException.class, event::save);
            assertTrue(e.what().contains("number is 2147483647; allowed are 0 to 1000000"), e.getMessage());
        }
        assertEquals(before, FolderContent.of(folder));
    }
}
