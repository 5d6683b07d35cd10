package org.straddle.model;

import java.util.Objects;
import java.util.UUID;

import org.eclipse.emf.ecore.EClass;

/**
 * Makes model objects that carry their identity from the start, because references between files need it before
 * the first save.
 */
public final class Fresh {

    private Fresh() {
    }

    public static Event event(String name) {
        Event event = identified(StraddleFactory.eINSTANCE.createEvent());
        event.setName(name);
        event.setPolicies(StraddleFactory.eINSTANCE.createPolicies());
        event.setPlan(plan());
        return event;
    }

    public static Region region() {
        return identified(StraddleFactory.eINSTANCE.createRegion());
    }

    public static Jurisdiction jurisdiction() {
        return identified(StraddleFactory.eINSTANCE.createJurisdiction());
    }

    public static Layer layer() {
        return identified(StraddleFactory.eINSTANCE.createLayer());
    }

    public static Base base() {
        return identified(StraddleFactory.eINSTANCE.createBase());
    }

    public static Operator operator() {
        return identified(StraddleFactory.eINSTANCE.createOperator());
    }

    public static Team team() {
        return identified(StraddleFactory.eINSTANCE.createTeam());
    }

    public static Kit kit() {
        return identified(StraddleFactory.eINSTANCE.createKit());
    }

    public static KitItem kitItem() {
        return identified(StraddleFactory.eINSTANCE.createKitItem());
    }

    public static DryRun dryRun() {
        return identified(StraddleFactory.eINSTANCE.createDryRun());
    }

    public static Site site() {
        return identified(StraddleFactory.eINSTANCE.createSite());
    }

    public static Visit visit() {
        return identified(StraddleFactory.eINSTANCE.createVisit());
    }

    public static Review review() {
        return identified(StraddleFactory.eINSTANCE.createReview());
    }

    public static Bird bird() {
        return identified(StraddleFactory.eINSTANCE.createBird());
    }

    public static Plan plan() {
        return identified(StraddleFactory.eINSTANCE.createPlan());
    }

    public static Stop stop() {
        return identified(StraddleFactory.eINSTANCE.createStop());
    }

    public static Turn turn() {
        return identified(StraddleFactory.eINSTANCE.createTurn());
    }

    public static Ban ban() {
        return identified(StraddleFactory.eINSTANCE.createBan());
    }

    public static Acceptance acceptance() {
        return identified(StraddleFactory.eINSTANCE.createAcceptance());
    }

    /** Any concrete kind of identified object, for code that knows only the kind. */
    public static Identified of(EClass kind) {
        return identified((Identified) StraddleFactory.eINSTANCE.create(Objects.requireNonNull(kind)));
    }

    private static <T extends Identified> T identified(T object) {
        object.setId(UUID.randomUUID().toString());
        return object;
    }
}
