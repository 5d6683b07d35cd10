package org.straddle.check.rules;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.check.Mend;
import org.straddle.model.Event;
import org.straddle.model.Link;
import org.straddle.model.StraddlePackage;

/** Gives a turn another place in the passband. */
record AgreeDownlink(String label, String turnId, double downlinkMhz) implements Mend {

    /** A whole kilohertz above the distance that collides. */
    private static final double STEP_MHZ = 0.006;

    /**
     * The nearest frequency within the bird's downlink that keeps clear of all others.
     *
     * @param taken frequencies that are in use at the same time, MHz
     */
    static Optional<Mend> clearOf(Collection<Double> taken, Work work) {
        Link band = work.bird().getDownlink();
        double now = work.turn().getDownlinkMhz();
        return taken.stream().flatMap(mhz -> Stream.of(mhz - STEP_MHZ, mhz + STEP_MHZ))
                .map(mhz -> Math.round(mhz * 1e4) / 1e4)
                .filter(mhz -> band == null || !(band.getHighMhz() > band.getLowMhz())
                        || band.getLowMhz() <= mhz && mhz <= band.getHighMhz())
                .filter(mhz -> taken.stream().noneMatch(other -> SharedTurns.isSame(mhz, other)))
                .min(Comparator.comparing((Double mhz) -> Math.abs(mhz - now)).thenComparing(Comparator.naturalOrder()))
                .map(mhz -> new AgreeDownlink("Agree on " + SameFrequency.mhz(mhz) + " MHz for "
                        + Words.name(work.team()), work.turn().getId(), mhz));
    }

    @Override
    public Command command(EditingDomain domain, Event live) {
        return new LivePlan(live).turn(turnId).map(turn -> SetCommand.create(domain, turn,
                StraddlePackage.Literals.TURN__DOWNLINK_MHZ, downlinkMhz)).orElse(UnexecutableCommand.INSTANCE);
    }
}
