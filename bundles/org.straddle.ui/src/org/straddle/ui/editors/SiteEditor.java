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
import org.straddle.model.Visit;
import org.straddle.model.Verdict;
import org.straddle.outlook.Outlook;
import org.straddle.visit.SiteVisits;
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
import org.straddle.words.Catalogue;

/** A site: its mark and squares, its horizon, and what people saw there and decided about it. */
public final class SiteEditor extends ThingEditor<Site> implements Revealing {

    private static final Catalogue TEXTS = Catalogue.of(SiteEditor.class);

    private TableField<Visit> visits;
    private TableField<Review> reviews;

    public SiteEditor() {
        super(Site.class);
    }

    @Override
    void fields(FieldForm form, Site site) {
        form.section(TEXTS.text("siteEditor.section.mark"), TEXTS.text("siteEditor.section.mark.description"));
        form.text(TEXTS.text("siteEditor.name"), "", Words.required(TEXTS.text("siteEditor.name.required")), site, Literals.SITE__NAME);
        form.text(TEXTS.text("siteEditor.position"), "", new Positions(), Marks.slot(session(), site, Literals.SITE__LATITUDE_DEG,
                Literals.SITE__LONGITUDE_DEG));
        form.text(TEXTS.text("siteEditor.markError"), TEXTS.text("siteEditor.markError.unit"), new ErrorRadii(), site,
                Literals.SITE__MARK_ERROR_M);
        form.text(TEXTS.text("siteEditor.height"), TEXTS.text("siteEditor.height.unit"), Numbers.between(-500, 9000), site, Literals.SITE__ALTITUDE_M);
        squares(form, site);
        presence(form, site);
        visits(form, site);
        horizon(form, site);
        reviews(form, site);
    }

    private void squares(FieldForm form, Site site) {
        SquareClaim claim = new SquareClaim(session(), site);
        form.section(TEXTS.text("siteEditor.section.squares"), TEXTS.text("siteEditor.section.squares.description"));
        form.choice(TEXTS.text("siteEditor.claimedKind"), SiteKind.VALUES, site, Literals.SITE__KIND);
        form.text(TEXTS.text("siteEditor.claimedSquares"), "", new SquareNames(), site, Literals.SITE__SQUARES);
        form.told(TEXTS.text("siteEditor.byTheMark"), claim::words);
        Button takeOver = form.button(TEXTS.text("siteEditor.takeOver"), TEXTS.text("siteEditor.takeOver.tooltip"),
                claim::takeOver);
        form.track(() -> takeOver.setEnabled(claim.differs()));
    }

    private void horizon(FieldForm form, Site site) {
        form.wide(TEXTS.text("siteEditor.section.horizon"), TEXTS.text("siteEditor.section.horizon.description"));
        HorizonCanvas[] canvas = new HorizonCanvas[1];
        canvas[0] = form.own(parent -> new HorizonCanvas(parent, site::getHorizon, () -> visitedHorizon(site), TEXTS.text("siteEditor.horizon.other"), TEXTS.text("siteEditor.horizon.none"),
                points -> HorizonForm.drawn(session(), site, points)), () -> HorizonForm.refresh(canvas[0]), 230);
        form.told(TEXTS.text("siteEditor.howFound"), () -> Objects.requireNonNullElse(site.getHorizonOrigin(), "–"));
        HorizonForm.buttons(form, site, site::getHorizon,
                () -> Optional.ofNullable(Marks.position(site.getLatitudeDeg(), site.getLongitudeDeg())));
        form.section(TEXTS.text("siteEditor.section.horizonPoints"), "");
        form.<HorizonPoint>table(site, Literals.SITE__HORIZON,
                StraddleFactory.eINSTANCE::createHorizonPoint, 6)
                .column(TEXTS.text("siteEditor.column.azimuth"), 120, Literals.HORIZON_POINT__AZIMUTH_DEG, Numbers.between(0, 359.999))
                .column(TEXTS.text("siteEditor.column.elevation"), 120, Literals.HORIZON_POINT__ELEVATION_DEG, Numbers.between(-30, 90));
    }

    private static List<HorizonPoint> visitedHorizon(Site site) {
        return SiteVisits.newestFirst(site).stream().map(Visit::getHorizon).filter(seen -> !seen.isEmpty()).findFirst()
                .<List<HorizonPoint>>map(seen -> seen).orElse(List.of());
    }

    private void presence(FieldForm form, Site site) {
        form.section(TEXTS.text("siteEditor.section.presence"), TEXTS.text("siteEditor.section.presence.description"));
        form.told(TEXTS.text("siteEditor.argument"), () -> MarkText.presence(session(), site));
    }

    private void visits(FieldForm form, Site site) {
        form.wide(TEXTS.text("siteEditor.section.visits"), TEXTS.text("siteEditor.section.visits.description"));
        visits = form.<Visit>table(site, Literals.SITE__VISITS, 4)
                .ordered(all -> SiteVisits.newestFirst(site))
                .column(TEXTS.text("siteEditor.column.date"), 95, visit -> Objects.toString(visit.getDate(), ""))
                .column(TEXTS.text("siteEditor.column.visitor"), 110, visit -> Objects.toString(visit.getVisitor(), ""))
                .column(TEXTS.text("siteEditor.column.mark"), 90, visit -> visit.getMark() == null ? "–" : TEXTS.text("siteEditor.error",
                        "metres", Numbers.plain(visit.getMark().getErrorM())))
                .column(TEXTS.text("siteEditor.column.horizon"), 80, visit -> visit.getHorizon().isEmpty() ? "–" : TEXTS.text("siteEditor.horizon.points",
                        "count", visit.getHorizon().size()))
                .column(TEXTS.text("siteEditor.column.hazards"), 75, visit -> String.valueOf(visit.getHazards().size() + visit.getOverheadLines().size()))
                .column(TEXTS.text("siteEditor.column.photos"), 65, visit -> String.valueOf(visit.getPhotos().size()))
                .column(TEXTS.text("siteEditor.column.allowedUntil"), 105, visit -> Objects.toString(visit.getAccessUntil(), "–"))
                .column(TEXTS.text("siteEditor.column.access"), 230, visit -> Objects.toString(visit.getAccess(), ""))
                .column(TEXTS.text("siteEditor.column.note"), 200, visit -> Objects.toString(visit.getNote(), ""));
        visits.viewer().addOpenListener(open -> openVisit());
        Button open = form.buttons(Deed.of(
                TEXTS.text("siteEditor.newVisit"), TEXTS.text("siteEditor.newVisit.tooltip"), this::newVisit),
                Deed.looking(TEXTS.text("siteEditor.openVisit"), TEXTS.text("siteEditor.openVisit.tooltip"), this::openVisit)).get(1);
        form.track(() -> open.setEnabled(!site.getVisits().isEmpty()));
    }

    private void newVisit() {
        LocalDate today = LocalDate.now(Outlook.zoneOf(session().event()));
        Visit visit = SiteVisits.next(thing(), today, null);
        if (session().execute(SiteVisits.add(session().editingDomain(), thing(), visit))) {
            session().reveal(visit);
        }
    }

    private void openVisit() {
        Object chosen = visits.viewer().getStructuredSelection().getFirstElement();
        SiteVisits.newestFirst(thing()).stream().filter(visit -> chosen == null || visit == chosen).findFirst().ifPresent(session()::reveal);
    }

    private void reviews(FieldForm form, Site site) {
        form.wide(TEXTS.text("siteEditor.section.reviews"), TEXTS.text("siteEditor.section.reviews.description"));
        reviews = form.<Review>table(site, Literals.SITE__REVIEWS, Fresh::review, 4)
                .column(TEXTS.text("siteEditor.column.date"), 95, Literals.REVIEW__DATE, new Dates())
                .column(TEXTS.text("siteEditor.column.reviewer"), 130, Literals.REVIEW__REVIEWER, new SignerName(site))
                .choice(TEXTS.text("siteEditor.column.verdict"), 130, Literals.REVIEW__VERDICT, Verdict.VALUES)
                .column(TEXTS.text("siteEditor.column.conditions"), 320, Literals.REVIEW__CONDITIONS, Words.any())
                .options(TEXTS.text("siteEditor.column.visit"), 150, Literals.REVIEW__VISIT, () -> visitChoices(site), SiteEditor::word)
                .column(TEXTS.text("siteEditor.column.holdsUntil"), 105, Literals.REVIEW__EXPIRES, new Dates());
    }

    @Override
    public void reveal(Identified part) {
        if (part instanceof Review) {
            reviews.select(part);
        }
    }

    private static List<Visit> visitChoices(Site site) {
        return Stream.concat(Stream.of((Visit) null), site.getVisits().stream()).toList();
    }

    private static String word(Visit visit) {
        return visit == null ? "" : String.valueOf(visit.getDate());
    }
}
