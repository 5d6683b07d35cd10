package org.straddle.exchange.chasers;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.grid.Square;
import org.straddle.model.Chaser;
import org.straddle.model.Event;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.words.Catalogue;

/**
 * Requests compared with the chasers that an event has: new ones, and those who need more squares or moved.
 *
 * @param known who asked for nothing new
 */
public record ChaserImport(Event event, List<Chaser> added, Map<Chaser, Request> changed, List<Request> known) {

    private static final Catalogue TEXTS = Catalogue.of(ChaserImport.class);

    public ChaserImport {
        added = List.copyOf(added);
        changed = Collections.unmodifiableMap(new LinkedHashMap<>(changed));
        known = List.copyOf(known);
    }

    public static ChaserImport into(Event event, ChaserList list) {
        Map<String, Chaser> present = new HashMap<>();
        event.getChaserList().forEach(chaser -> present.put(
                chaser.getCallSign() == null ? "" : chaser.getCallSign().strip().toUpperCase(Locale.ROOT), chaser));
        List<Chaser> added = new ArrayList<>();
        Map<Chaser, Request> changed = new LinkedHashMap<>();
        List<Request> known = new ArrayList<>();
        for (Request request : list.requests()) {
            Chaser chaser = present.get(request.callSign());
            if (chaser == null) {
                added.add(chaser(request));
            } else if (!request.locator().equals(chaser.getLocator())
                    || !chaser.getSquares().containsAll(names(request))) {
                changed.put(chaser, request);
            } else {
                known.add(request);
            }
        }
        return new ChaserImport(event, added, changed, known);
    }

    public boolean isEmpty() {
        return added.isEmpty() && changed.isEmpty();
    }

    /** What all lines come to, a sentence. */
    public String summary(ChaserList list) {
        return TEXTS.text("chasers.summary", "added", added.size(), "changed", changed.size(), "known", known.size(),
                "doubles", list.doubles(), "refused", list.refused().size());
    }

    /** Names of the squares that the chaser will need: those of the event, and those asked for. */
    public static List<String> squares(Chaser chaser, Request request) {
        TreeSet<String> squares = new TreeSet<>(chaser.getSquares());
        squares.addAll(names(request));
        return List.copyOf(squares);
    }

    /** One undo. */
    public Command command(EditingDomain domain) {
        CompoundCommand all = new CompoundCommand();
        if (!added.isEmpty()) {
            all.append(AddCommand.create(domain, event, Literals.EVENT__CHASER_LIST, added));
        }
        changed.forEach((chaser, request) -> {
            all.append(SetCommand.create(domain, chaser, Literals.CHASER__LOCATOR, request.locator()));
            all.append(SetCommand.create(domain, chaser, Literals.CHASER__SQUARES, squares(chaser, request)));
        });
        return all;
    }

    private static Chaser chaser(Request request) {
        Chaser chaser = StraddleFactory.eINSTANCE.createChaser();
        chaser.setCallSign(request.callSign());
        chaser.setLocator(request.locator());
        chaser.getSquares().addAll(names(request));
        return chaser;
    }

    private static List<String> names(Request request) {
        return request.squares().stream().map(Square::name).toList();
    }
}
