package org.straddle.ui.editors;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Button;
import org.straddle.model.Fresh;
import org.straddle.model.HorizonPoint;
import org.straddle.model.Identified;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Survey;
import org.straddle.model.Verdict;
import org.straddle.outlook.Outlook;
import org.straddle.survey.Visit;
import org.straddle.ui.fields.Dates;
import org.straddle.ui.fields.Deed;
import org.straddle.ui.fields.ErrorRadii;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Numbers;
import org.straddle.ui.fields.Positions;
import org.straddle.ui.fields.SquareNames;
import org.straddle.ui.fields.TableField;
import org.straddle.ui.fields.Words;
import org.straddle.ui.horizon.HorizonCanvas;

/** A site: its mark and squares, its horizon, and what people saw there and decided about it. */
public final class SiteEditor extends ThingEditor<Site> implements Revealing {

    private TableField<Survey> surveys;
    private TableField<Review> reviews;

    public SiteEditor() {
        super(Site.class);
    }

    @Override
    void fields(FieldForm form, Site site) {
        form.section("Mark", "The spot that the station stands on.");
        form.text("Name", "", Words.required("Enter the site's name."), site, Literals.SITE__NAME);
        form.text("Position", "", new Positions(), Marks.slot(session(), site, Literals.SITE__LATITUDE_DEG,
                Literals.SITE__LONGITUDE_DEG));
        form.text("Mark error", "m, and which radius", new ErrorRadii(), site,
                Literals.SITE__MARK_ERROR_M);
        form.text("Height", "m above the ellipsoid", Numbers.between(-500, 9000), site, Literals.SITE__ALTITUDE_M);
        squares(form, site);
        presence(form, site);
        surveys(form, site);
        horizon(form, site);
        reviews(form, site);
    }

    private void squares(FieldForm form, Site site) {
        SquareClaim claim = new SquareClaim(session(), site);
        form.section("Squares", "What is claimed, and what the mark allows.");
        form.choice("Claimed kind", SiteKind.VALUES, site, Literals.SITE__KIND);
        form.text("Claimed squares", "", new SquareNames(), site, Literals.SITE__SQUARES);
        form.told("By the mark", claim::words);
        Button takeOver = form.button("Take over", "Claim the kind and the squares that the mark allows",
                claim::takeOver);
        form.track(() -> takeOver.setEnabled(claim.differs()));
    }

    private void horizon(FieldForm form, Site site) {
        form.wide("Horizon", "Least elevation at which the sky is free; no points mean a flat horizon. Click to add a point, drag to"
                + " move it; keys: Page Up and Down, arrows (with Shift finer), Insert, Delete.");
        HorizonCanvas[] canvas = new HorizonCanvas[1];
        canvas[0] = form.own(parent -> new HorizonCanvas(parent, site::getHorizon, () -> visitedHorizon(site), "newest visit", "flat at 0°",
                points -> HorizonForm.drawn(session(), site, points)), () -> HorizonForm.refresh(canvas[0]), 230);
        form.told("How found", () -> Objects.requireNonNullElse(site.getHorizonOrigin(), "–"));
        HorizonForm.buttons(form, site, site::getHorizon,
                () -> Optional.ofNullable(Marks.position(site.getLatitudeDeg(), site.getLongitudeDeg())));
        form.section("Horizon points", "");
        form.<HorizonPoint>table(site, Literals.SITE__HORIZON, "horizon point",
                StraddleFactory.eINSTANCE::createHorizonPoint, 6)
                .column("Azimuth, °", 120, Literals.HORIZON_POINT__AZIMUTH_DEG, Numbers.between(0, 359.999))
                .column("Elevation, °", 120, Literals.HORIZON_POINT__ELEVATION_DEG, Numbers.between(-30, 90));
    }

    private static List<HorizonPoint> visitedHorizon(Site site) {
        return Visit.newestFirst(site).stream().map(Survey::getHorizon).filter(seen -> !seen.isEmpty()).findFirst()
                .<List<HorizonPoint>>map(seen -> seen).orElse(List.of());
    }

    private void presence(FieldForm form, Site site) {
        form.section("Presence", "Whether it can be argued that the station stands in every square it claims.");
        form.told("Argument", () -> MarkText.presence(session(), site));
    }

    private void surveys(FieldForm form, Site site) {
        form.wide("Visits", "What somebody saw, newest first. A new visit starts from the last one and leaves it as it was.");
        surveys = form.<Survey>table(site, Literals.SITE__SURVEYS, "survey", 4)
                .ordered(all -> Visit.newestFirst(site))
                .column("Date", 95, visit -> Objects.toString(visit.getDate(), ""))
                .column("Surveyor", 110, visit -> Objects.toString(visit.getSurveyor(), ""))
                .column("Mark", 90, visit -> visit.getMark() == null ? "–" : "± " + Numbers.plain(visit.getMark().getErrorM()) + " m")
                .column("Horizon", 80, visit -> visit.getHorizon().isEmpty() ? "–" : visit.getHorizon().size() + " points")
                .column("Hazards", 75, visit -> String.valueOf(visit.getHazards().size() + visit.getOverheadLines().size()))
                .column("Photos", 65, visit -> String.valueOf(visit.getPhotos().size()))
                .column("Allowed until", 105, visit -> Objects.toString(visit.getAccessUntil(), "–"))
                .column("Access", 230, visit -> Objects.toString(visit.getAccess(), ""))
                .column("Note", 200, visit -> Objects.toString(visit.getNote(), ""));
        surveys.viewer().addOpenListener(open -> openVisit());
        Button open = form.buttons(Deed.of("New visit", "Add a visit of today that starts from the newest one", this::newVisit),
                Deed.looking("Open visit", "Show everything that was seen at the chosen visit (Enter)", this::openVisit)).get(1);
        form.track(() -> open.setEnabled(!site.getSurveys().isEmpty()));
    }

    private void newVisit() {
        LocalDate today = LocalDate.now(Outlook.zoneOf(session().event()));
        Survey visit = Visit.next(thing(), today, null);
        if (session().execute(Visit.add(session().editingDomain(), thing(), visit))) {
            session().reveal(visit);
        }
    }

    private void openVisit() {
        Object chosen = surveys.viewer().getStructuredSelection().getFirstElement();
        Visit.newestFirst(thing()).stream().filter(visit -> chosen == null || visit == chosen).findFirst().ifPresent(session()::reveal);
    }

    private void reviews(FieldForm form, Site site) {
        form.wide("Reviews", "Somebody looked at the hazards and put their name to a verdict.");
        reviews = form.<Review>table(site, Literals.SITE__REVIEWS, "review", Fresh::review, 4)
                .column("Date", 95, Literals.REVIEW__DATE, new Dates())
                .column("Reviewer", 130, Literals.REVIEW__REVIEWER, Words.any())
                .choice("Verdict", 130, Literals.REVIEW__VERDICT, Verdict.VALUES)
                .column("Conditions", 320, Literals.REVIEW__CONDITIONS, Words.any())
                .options("Survey", 150, Literals.REVIEW__SURVEY, () -> surveyChoices(site), SiteEditor::word)
                .column("Holds until", 105, Literals.REVIEW__EXPIRES, new Dates());
    }

    @Override
    public void reveal(Identified part) {
        if (part instanceof Review) {
            reviews.select(part);
        }
    }

    private static List<Survey> surveyChoices(Site site) {
        return Stream.concat(Stream.of((Survey) null), site.getSurveys().stream()).toList();
    }

    private static String word(Survey survey) {
        return survey == null ? "" : String.valueOf(survey.getDate());
    }
}
