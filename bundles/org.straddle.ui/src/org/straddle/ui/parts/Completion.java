package org.straddle.ui.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

import org.eclipse.jface.fieldassist.ContentProposal;
import org.eclipse.jface.fieldassist.ContentProposalAdapter;
import org.eclipse.jface.fieldassist.IContentProposal;
import org.eclipse.jface.fieldassist.TextContentAdapter;
import org.eclipse.swt.widgets.Text;

/**
 * Offers, while somebody types, what has the typed letters anywhere in it, a blank standing for an underscore; the arrow
 * keys choose, Return takes, Escape goes on typing.
 */
public final class Completion {

    private static final int OFFERED = 40;

    private Completion() {
    }

    public static void on(Text box, Supplier<? extends Iterable<String>> all) {
        ContentProposalAdapter adapter = new ContentProposalAdapter(box, new TextContentAdapter(),
                (typed, cursor) -> matching(typed, all.get()).stream().map(ContentProposal::new).toArray(IContentProposal[]::new),
                null, null);
        adapter.setProposalAcceptanceStyle(ContentProposalAdapter.PROPOSAL_REPLACE);
    }

    /** Those that begin a word with the text come first. */
    static List<String> matching(String typed, Iterable<String> all) {
        String wanted = plain(typed.strip());
        List<String> begins = new ArrayList<>();
        List<String> holds = new ArrayList<>();
        for (String one : all) {
            String plain = plain(one);
            if (beginsAWord(plain, wanted)) {
                begins.add(one);
            } else if (plain.contains(wanted)) {
                holds.add(one);
            }
        }
        begins.addAll(holds);
        // What stands there whole needs no offer.
        return begins.size() == 1 && plain(begins.get(0)).equals(wanted) ? List.of()
                : begins.subList(0, Math.min(OFFERED, begins.size()));
    }

    private static boolean beginsAWord(String plain, String wanted) {
        int at = plain.indexOf(wanted);
        while (at > 0 && Character.isLetter(plain.charAt(at - 1))) {
            at = plain.indexOf(wanted, at + 1);
        }
        return at >= 0;
    }

    private static String plain(String text) {
        return text.replace('_', ' ').toLowerCase(Locale.ROOT);
    }
}
