package org.straddle.demo;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeSet;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.straddle.model.Contact;
import org.straddle.model.ContactRole;
import org.straddle.model.Demand;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Policies;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;

/**
 * An invented event to look at and try things on: the Skerry Radio Circle, a made-up club, roves Iceland for three
 * days of June 2027. Only the geography is real. Its plan is a first draft with every kind of mistake a check can
 * find, none of it pinned, so that a planner may replace all of it. Each call makes an equal event with the same ids.
 */
public final class DemoEvent {

    private DemoEvent() {
    }

    public static Event create() {
        return EcoreUtil.copy(Made.EVENT);
    }

    /** Made once: where the birds of its draft pass takes longer to compute than to copy. */
    private static final class Made {
        static final Event EVENT = make();
    }

    private static Event make() {
        Event event = DemoIdentity.named(Fresh.event("Skerry midsummer rove (demo)", "Atlantic/Reykjavik",
                LocalDate.parse("2027-06-18"), LocalDate.parse("2027-06-20")), "event");
        DemoIdentity.named(event.getPlan(), "plan");
        event.setClub("Skerry Radio Circle (invented)");
        event.setAnnouncementText("Three teams of the Skerry Radio Circle work from squares, lines and a corner of "
                + "Iceland. This is a demo: club, calls, birds and sites are invented, and nothing in it is advice "
                + "about a real place.");
        policies(event.getPolicies());
        contact(event, ContactRole.COORDINATOR, "Ines Plover (invented)", "+999 555 0100");
        contact(event, ContactRole.DEPUTY, "Tam Whinchat (invented)", "+999 555 0101");
        contact(event, ContactRole.EMERGENCY, "All emergency services in Iceland", "112");
        DemoTeams.addTo(event);
        DemoSites.addTo(event);
        demands(event);
        DemoRegions.addTo(event);
        DemoLayers.addTo(event);
        DemoBirds.addTo(event);
        DemoDraft.addTo(event);
        return event;
    }

    /**
     * Makes an event folder of it, with the files of element sets that it was "imported" from, and of its layers.
     *
     * @param folder does not exist yet, or is empty
     */
    public static void write(Path folder) throws EventFolderException {
        try (EventFolder written = EventFolder.create(folder, create())) {
            for (String file : DemoBirds.ELEMENT_FILES) {
                written.addElementsFile(file, DemoBirds.bytes(file));
            }
            for (Map.Entry<String, byte[]> layer : DemoLayers.files(written.event()).entrySet()) {
                written.addLayer(layer.getKey(), layer.getValue());
            }
            written.save();
        }
    }

    private static void contact(Event event, ContactRole role, String name, String reach) {
        Contact contact = StraddleFactory.eINSTANCE.createContact();
        contact.setRole(role);
        contact.setName(name);
        contact.setReach(reach);
        event.getContacts().add(contact);
    }

    private static void policies(Policies policies) {
        policies.setRoadSpeedKmh(70);
        policies.setDetourFactor(1.3);
        policies.setDrivingLimitMinutes(480);
        // Other squares still lack turns.
        policies.setTooOftenPercent(30);
    }

    /** Squares that a site claims, by their rank in the alphabet, and some that no site claims. */
    private static void demands(Event event) {
        TreeSet<String> claimed = new TreeSet<>();
        for (Site site : event.getSites()) {
            claimed.addAll(site.getSquares());
        }
        int rank = 0;
        for (String square : claimed) {
            demand(event, square, 25 + rank++ * 37 % 70);
        }
        demand(event, "HP83", 35);
        demand(event, "HP85", 72);
        demand(event, "HP96", 88);
        demand(event, "IP26", 64);
    }

    private static void demand(Event event, String square, double sharePercent) {
        Demand demand = StraddleFactory.eINSTANCE.createDemand();
        demand.setSquare(square);
        demand.setSharePercent(sharePercent);
        event.getDemands().add(demand);
    }
}
