package org.straddle.ui.editors;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.straddle.model.Fresh;
import org.straddle.model.Hazard;
import org.straddle.model.HazardKind;
import org.straddle.model.HorizonPoint;
import org.straddle.model.Identified;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Survey;
import org.straddle.model.Verdict;
import org.straddle.ui.fields.Dates;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Numbers;
import org.straddle.ui.fields.Positions;
import org.straddle.ui.fields.SquareNames;
import org.straddle.ui.fields.TableField;
import org.straddle.ui.fields.Words;

/** A site: its mark and squares, its horizon, and what people saw there and decided about it. */
public final class SiteEditor extends ThingEditor<Site> implements Revealing {

    private TableField<Survey> surveys;
    private TableField<Hazard> hazards;
    private TableField<Review> reviews;

    public SiteEditor() {
        super(Site.class);
    }

    @Override
    void fields(FieldForm form, Site site) {
        form.section("Mark", "The spot that the station stands on.");
        form.text("Name", "", Words.required("the site's name"), site, Literals.SITE__NAME);
        form.text("Position", "", new Positions(), Marks.slot(session(), site, Literals.SITE__LATITUDE_DEG,
                Literals.SITE__LONGITUDE_DEG));
        form.text("Mark error", "m, holds 95 % of fixes", Numbers.between(0, 100_000), site,
                Literals.SITE__MARK_ERROR_M);
        form.text("Height", "m above the ellipsoid", Numbers.between(-500, 9000), site, Literals.SITE__ALTITUDE_M);
        squares(form, site);
        horizon(form, site);
        surveys(form, site);
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
        form.section("Horizon", "Least elevation at which the sky is free. No points mean a flat horizon.");
        form.<HorizonPoint>table(site, Literals.SITE__HORIZON, "horizon point",
                StraddleFactory.eINSTANCE::createHorizonPoint, 6)
                .column("Azimuth, °", 120, Literals.HORIZON_POINT__AZIMUTH_DEG, Numbers.between(0, 359.999))
                .column("Elevation, °", 120, Literals.HORIZON_POINT__ELEVATION_DEG, Numbers.between(-30, 90));
        form.section("Looking around", "");
        Canvas[] strip = new Canvas[1];
        strip[0] = form.own(parent -> new HorizonStrip(parent, site), () -> {
            if (strip[0] != null) {
                strip[0].redraw();
            }
        }, 150);
    }

    private void surveys(FieldForm form, Site site) {
        form.wide("Surveys", "What somebody saw on a visit; a new visit is a new row. Choose one to see its hazards"
                + " below.");
        surveys = form.<Survey>table(site, Literals.SITE__SURVEYS, "survey", Fresh::survey, 4)
                .column("Date", 95, Literals.SURVEY__DATE, new Dates())
                .column("Surveyor", 120, Literals.SURVEY__SURVEYOR, Words.any())
                .column("Access", 220, Literals.SURVEY__ACCESS, Words.any())
                .column("Allowed until", 115, Literals.SURVEY__ACCESS_UNTIL, new Dates())
                .column("Road, km/h", 100, Literals.SURVEY__ROAD_SPEED_KMH, Numbers.between(0, 250))
                .column("Parking", 130, Literals.SURVEY__PARKING, Words.any())
                .column("Surface", 110, Literals.SURVEY__SURFACE, Words.any())
                .column("Phone", 100, Literals.SURVEY__PHONE_COVERAGE, Words.any())
                .column("Note", 180, Literals.SURVEY__NOTE, Words.any());
        form.wide("Hazards of the chosen survey", "What may hurt somebody there, and what the team does about it."
                + " Local rules and people on the spot come first.");
        hazards = form.<Hazard>table(this::chosenSurvey, Literals.SURVEY__HAZARDS, "hazard",
                StraddleFactory.eINSTANCE::createHazard, 4)
                .choice("Kind", 120, Literals.HAZARD__KIND, HazardKind.VALUES)
                .column("What", 300, Literals.HAZARD__DESCRIPTION, Words.any())
                .column("Distance, m", 110, Literals.HAZARD__DISTANCE_M, Numbers.between(0, 100_000))
                .column("Measure", 380, Literals.HAZARD__MEASURE, Words.any());
        surveys.viewer().addSelectionChangedListener(choice -> hazards.refresh());
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

    /** The chosen survey, or the newest while none is chosen. */
    private Survey chosenSurvey() {
        if (surveys.viewer().getStructuredSelection().getFirstElement() instanceof Survey chosen
                && chosen.eContainer() == thing()) {
            return chosen;
        }
        List<Survey> all = thing().getSurveys();
        return all.isEmpty() ? null : all.get(all.size() - 1);
    }

    @Override
    public void reveal(Identified part) {
        if (part instanceof Survey) {
            surveys.select(part);
        } else if (part instanceof Review) {
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
