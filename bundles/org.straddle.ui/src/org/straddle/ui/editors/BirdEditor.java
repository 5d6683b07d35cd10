package org.straddle.ui.editors;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;

import org.eclipse.emf.ecore.EReference;
import org.straddle.model.Access;
import org.straddle.model.Bird;
import org.straddle.model.BirdElements;
import org.straddle.model.BirdReport;
import org.straddle.model.BirdState;
import org.straddle.model.Event;
import org.straddle.model.OperatingPeriod;
import org.straddle.model.ReportKind;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.WorkMode;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.things.Times;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Instants;
import org.straddle.ui.fields.Numbers;
import org.straddle.ui.fields.Slot;
import org.straddle.ui.fields.Words;

/** A bird: how it is worked, whether it works, when it is on, and the element sets that say where it is. */
public final class BirdEditor extends ThingEditor<Bird> {

    public BirdEditor() {
        super(Bird.class);
    }

    @Override
    void fields(FieldForm form, Bird bird) {
        form.section("Bird", "");
        form.text("Name", "", Words.required("Enter the bird's name."), bird, Literals.BIRD__NAME);
        form.text("Catalogue number", "", Numbers.whole(0, 999_999_999), bird, Literals.BIRD__CATALOGUE_NUMBER);
        form.choice("State", BirdState.VALUES, bird, Literals.BIRD__STATE);

        form.section("How it is worked", "");
        form.choice("Mode", WorkMode.VALUES, bird, Literals.BIRD__MODE);
        form.choice("Access", Access.VALUES, bird, Literals.BIRD__ACCESS);
        form.check("Works only while the sun shines on it", bird, Literals.BIRD__LIT_ONLY);

        link(form, bird, "Uplink", Literals.BIRD__UPLINK);
        link(form, bird, "Downlink", Literals.BIRD__DOWNLINK);
        reports(form, bird, session().event());
        elements(form, bird, session().event());
    }

    private void link(FieldForm form, Bird bird, String title, EReference link) {
        form.section(title, "");
        form.text("From", "MHz", Numbers.between(0, 300_000),
                Slot.inside(session(), bird, link, Literals.LINK__LOW_MHZ));
        form.text("To", "MHz, the same on one channel", Numbers.between(0, 300_000),
                Slot.inside(session(), bird, link, Literals.LINK__HIGH_MHZ));
        if (link == Literals.BIRD__UPLINK) {
            form.text("Access tone", "Hz, 0 for none", Numbers.between(0, 300),
                    Slot.inside(session(), bird, link, Literals.LINK__TONE_HZ));
        } else {
            form.check("The passband runs the other way than the uplink",
                    Slot.inside(session(), bird, link, Literals.LINK__INVERTED));
        }
    }

    private void reports(FieldForm form, Bird bird, Event event) {
        form.wide("Reports", "To have heard a bird is not yet to have worked it.");
        form.<BirdReport>table(bird, Literals.BIRD__REPORTS, "report", StraddleFactory.eINSTANCE::createBirdReport, 4)
                .column("At (UTC)", 150, Literals.BIRD_REPORT__AT, Instants.in(event))
                .choice("What", 190, Literals.BIRD_REPORT__KIND, ReportKind.VALUES)
                .column("By", 130, Literals.BIRD_REPORT__BY, Words.any())
                .column("Note", 380, Literals.BIRD_REPORT__NOTE, Words.any());
        form.wide("Calendar", "When the transponder is switched on. No rows mean always.");
        form.<OperatingPeriod>table(bird, Literals.BIRD__CALENDAR, "period",
                StraddleFactory.eINSTANCE::createOperatingPeriod, 3)
                .column("From (UTC)", 150, Literals.OPERATING_PERIOD__FROM, Instants.in(event))
                .column("Until (UTC)", 150, Literals.OPERATING_PERIOD__UNTIL, Instants.in(event))
                .column("Note", 400, Literals.OPERATING_PERIOD__NOTE, Words.any());
    }

    private void elements(FieldForm form, Bird bird, Event event) {
        form.wide("Element sets", "As imported; the one nearest to a pass is used. File, Import element sets brings"
                + " newer ones.");
        form.<BirdElements>table(bird, Literals.BIRD__ELEMENT_SETS, "element set", 5)
                .column("Epoch (UTC)", 160, set -> set.getEpoch() == null ? "" : Times.utcEntry(set.getEpoch()))
                .column("Before the event", 130, set -> age(set, event))
                .column("Catalogue", 85, set -> String.valueOf(set.getCatalogueNumber()))
                .column("Revolutions a day", 130, set -> format("%.5f", set.getMeanMotionRevPerDay()))
                .column("Inclination, °", 100, set -> format("%.3f", set.getInclinationDeg()))
                .column("Eccentricity", 100, set -> format("%.6f", set.getEccentricity()))
                .column("File", 170, set -> set.getFile() == null ? "" : set.getFile())
                .column("Origin", 120, set -> set.getOrigin() == null ? "" : set.getOrigin())
                .column("Imported (UTC)", 140,
                        set -> set.getImportedAt() == null ? "" : Times.utcEntry(set.getImportedAt()));
    }

    private static String age(BirdElements set, Event event) {
        if (set.getEpoch() == null || event.getFirstDay() == null) {
            return "";
        }
        Instant start = event.getFirstDay().atStartOfDay(Outlook.zoneOf(event)).toInstant();
        double days = Duration.between(set.getEpoch(), start).toSeconds() / 86_400.0;
        return days >= 0 ? format("%.1f days", days) : format("%.1f days after its start", -days);
    }

    private static String format(String pattern, double value) {
        return String.format(Locale.ROOT, pattern, value);
    }
}
