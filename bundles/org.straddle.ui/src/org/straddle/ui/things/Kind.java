package org.straddle.ui.things;

import java.util.Optional;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;

/** The kinds of thing that a user names, opens and makes. */
public enum Kind {

    EVENT("event", "event", Literals.EVENT, null),
    BASE("base", "base", Literals.BASE, Literals.EVENT__BASES),
    OPERATOR("operator", "operator", Literals.OPERATOR, Literals.EVENT__OPERATORS),
    TEAM("team", "team", Literals.TEAM, Literals.EVENT__TEAMS),
    KIT("kit", "kit", Literals.KIT, Literals.EVENT__KITS),
    SITE("site", "site-inside", Literals.SITE, Literals.EVENT__SITES),
    BIRD("bird", "bird", Literals.BIRD, Literals.EVENT__BIRDS),
    STOP("stop", "stop", Literals.STOP, Literals.PLAN__STOPS),
    TURN("turn", "turn", Literals.TURN, Literals.STOP__TURNS),
    ITEM("item", "item", Literals.KIT_ITEM, Literals.KIT__ITEMS),
    VISIT("visit", "visit", Literals.VISIT, Literals.SITE__VISITS),
    REVIEW("review", "review", Literals.REVIEW, Literals.SITE__REVIEWS);

    private static final Catalogue TEXTS = Catalogue.of(Kind.class);

    private final String editor;
    private final String icon;
    private final EClass type;
    private final EReference home;

    Kind(String editor, String icon, EClass type, EReference home) {
        this.editor = editor;
        this.icon = icon;
        this.type = type;
        this.home = home;
    }

    public static Optional<Kind> of(EObject object) {
        for (Kind kind : values()) {
            if (kind.type == object.eClass()) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }

    /** The thing itself if it has an editor of its own, else the nearest thing around it that has one. */
    public static Identified edited(Identified thing) {
        EObject object = thing;
        while (of(object).filter(Kind::hasEditor).isEmpty()) {
            object = object.eContainer();
        }
        return (Identified) object;
    }

    /** Items and reviews are edited with the kit or site that holds them, the plan with the event. */
    public boolean hasEditor() {
        return this != ITEM && this != REVIEW;
    }

    public String editorId() {
        return "org.straddle.ui.editor." + editor;
    }

    /** In running text: "site". */
    public String word() {
        return Naming.inCurrent().type(type);
    }

    /** As a heading: "Sites". */
    public String plural() {
        return TEXTS.text("plural." + editor);
    }

    public EClass type() {
        return type;
    }

    /** The list that holds things of this kind; null for the event. */
    public EReference home() {
        return home;
    }

    public String icon() {
        return icon;
    }

    /** Sites show how many squares meet there. */
    public static String icon(EObject object) {
        if (object instanceof Site site) {
            return switch (site.getKind()) {
                case INSIDE -> "site-inside";
                case LINE -> "site-line";
                case CORNER -> "site-corner";
            };
        }
        return of(object).map(Kind::icon).orElse("item");
    }
}
