package org.straddle.ui.editors;

import java.time.Duration;
import java.time.Instant;

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
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Instants;
import org.straddle.ui.fields.Megahertz;
import org.straddle.ui.fields.Numbers;
import org.straddle.ui.fields.Slot;
import org.straddle.ui.fields.Words;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/** A bird: how it is worked, whether it works, when it is on, and the element sets that say where it is. */
public final class BirdEditor extends ThingEditor<Bird> {

    private static final Catalogue TEXTS = Catalogue.of(BirdEditor.class);

    public BirdEditor() {
        super(Bird.class);
    }

    @Override
    void fields(FieldForm form, Bird bird) {
        form.section(TEXTS.text("birdEditor.section.bird"), "");
        form.text(TEXTS.text("birdEditor.name"), "", Words.required(TEXTS.text("birdEditor.name.required")), bird, Literals.BIRD__NAME);
        form.text(TEXTS.text("birdEditor.catalogueNumber"),
                "", Numbers.wholeOrUnknown(1, 999_999_999), bird, Literals.BIRD__CATALOGUE_NUMBER);
        form.choice(TEXTS.text("birdEditor.state"), BirdState.VALUES, bird, Literals.BIRD__STATE);

        form.section(TEXTS.text("birdEditor.section.howItIsWorked"), "");
        form.choice(TEXTS.text("birdEditor.mode"), WorkMode.VALUES, bird, Literals.BIRD__MODE);
        form.choice(TEXTS.text("birdEditor.access"), Access.VALUES, bird, Literals.BIRD__ACCESS);
        form.check(TEXTS.text("birdEditor.litOnly"), bird, Literals.BIRD__LIT_ONLY);

        link(form, bird, TEXTS.text("birdEditor.uplink"), Literals.BIRD__UPLINK);
        link(form, bird, TEXTS.text("birdEditor.downlink"), Literals.BIRD__DOWNLINK);
        reports(form, bird, session().event());
        elements(form, bird, session().event());
    }

    private void link(FieldForm form, Bird bird, String title, EReference link) {
        form.section(title, "");
        form.text(TEXTS.text("birdEditor.from"), TEXTS.text("birdEditor.from.unit"), new Megahertz(),
                Slot.inside(session(), bird, link, Literals.LINK__LOW_MHZ));
        form.text(TEXTS.text("birdEditor.to"), TEXTS.text("birdEditor.to.unit"), Numbers.orUnknown(0, 300_000),
                Slot.inside(session(), bird, link, Literals.LINK__HIGH_MHZ));
        if (link == Literals.BIRD__UPLINK) {
            form.text(TEXTS.text("birdEditor.accessTone"), TEXTS.text("birdEditor.accessTone.unit"), Numbers.orUnknown(0, 300),
                    Slot.inside(session(), bird, link, Literals.LINK__TONE_HZ));
        } else {
            form.check(TEXTS.text("birdEditor.inverted"),
                    Slot.inside(session(), bird, link, Literals.LINK__INVERTED));
        }
    }

    private void reports(FieldForm form, Bird bird, Event event) {
        form.wide(TEXTS.text("birdEditor.section.reports"), TEXTS.text("birdEditor.section.reports.description"));
        form.<BirdReport>table(bird, Literals.BIRD__REPORTS, StraddleFactory.eINSTANCE::createBirdReport, 4)
                .column(TEXTS.text("birdEditor.column.atUtc"), 150, Literals.BIRD_REPORT__AT, Instants.in(event))
                .choice(TEXTS.text("birdEditor.column.what"), 190, Literals.BIRD_REPORT__KIND, ReportKind.VALUES)
                .column(TEXTS.text("birdEditor.column.by"), 130, Literals.BIRD_REPORT__BY, Words.any())
                .column(TEXTS.text("birdEditor.column.note"), 380, Literals.BIRD_REPORT__NOTE, Words.any());
        form.wide(TEXTS.text("birdEditor.section.calendar"), TEXTS.text("birdEditor.section.calendar.description"));
        form.<OperatingPeriod>table(bird, Literals.BIRD__CALENDAR,
                StraddleFactory.eINSTANCE::createOperatingPeriod, 3)
                .column(TEXTS.text("birdEditor.column.fromUtc"), 150, Literals.OPERATING_PERIOD__FROM, Instants.in(event))
                .column(TEXTS.text("birdEditor.column.untilUtc"), 150, Literals.OPERATING_PERIOD__UNTIL, Instants.in(event))
                .column(TEXTS.text("birdEditor.column.note"), 400, Literals.OPERATING_PERIOD__NOTE, Words.any());
    }

    private void elements(FieldForm form, Bird bird, Event event) {
        FigureText figures = FigureText.inCurrent();
        Instants instants = Instants.in(event);
        form.wide(TEXTS.text("birdEditor.section.elementSets"), TEXTS.text("birdEditor.section.elementSets.description"));
        form.<BirdElements>table(bird, Literals.BIRD__ELEMENT_SETS, 5)
                .column(TEXTS.text("birdEditor.column.epochUtc"), 160, set -> instants.print(set.getEpoch()))
                .column(TEXTS.text("birdEditor.column.beforeTheEvent"), 130, set -> age(set, event))
                .column(TEXTS.text("birdEditor.column.catalogue"), 85, set -> String.valueOf(set.getCatalogueNumber()))
                .column(TEXTS.text("birdEditor.column.revolutions"), 130, set -> figures.fixed(5, set.getMeanMotionRevPerDay()))
                .column(TEXTS.text("birdEditor.column.inclination"), 100, set -> figures.fixed(3, set.getInclinationDeg()))
                .column(TEXTS.text("birdEditor.column.eccentricity"), 100, set -> figures.fixed(6, set.getEccentricity()))
                .column(TEXTS.text("birdEditor.column.file"), 170, set -> set.getFile() == null ? "" : set.getFile())
                .column(TEXTS.text("birdEditor.column.origin"), 120, set -> set.getOrigin() == null ? "" : set.getOrigin())
                .column(TEXTS.text("birdEditor.column.importedUtc"), 140,
                        set -> instants.print(set.getImportedAt()));
    }

    private static String age(BirdElements set, Event event) {
        if (set.getEpoch() == null || event.getFirstDay() == null) {
            return "";
        }
        Instant start = event.getFirstDay().atStartOfDay(Outlook.zoneOf(event)).toInstant();
        double days = Duration.between(set.getEpoch(), start).toSeconds() / 86_400.0;
        return days >= 0 ? TEXTS.text("birdEditor.age", "days", days) : TEXTS.text("birdEditor.age.after", "days", -days);
    }
}
