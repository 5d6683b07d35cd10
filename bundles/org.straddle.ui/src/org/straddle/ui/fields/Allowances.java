package org.straddle.ui.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.model.Allowance;
import org.straddle.model.StraddleFactory;
import org.straddle.words.Catalogue;

/** What licence classes may use: {@code Full: 2m 70cm; Novice: 70cm}. */
public final class Allowances implements Notation<List<Allowance>> {

    private static final Catalogue TEXTS = Catalogue.of(Allowances.class);

    @Override
    public String print(List<Allowance> allowances) {
        return allowances.stream().map(allowance -> (allowance.getLicenceClass() == null ? "" : allowance.getLicenceClass())
                + ": " + String.join(" ", allowance.getBands())).collect(Collectors.joining("; "));
    }

    @Override
    public List<Allowance> parse(String text) {
        List<Allowance> allowances = new ArrayList<>();
        for (String part : text.split(";")) {
            if (part.isBlank()) {
                continue;
            }
            int colon = part.indexOf(':');
            if (colon < 0 || part.substring(0, colon).isBlank()) {
                throw new IllegalArgumentException(TEXTS.text("allowances.noclass", "part", part.strip()));
            }
            List<String> bands = Stream.of(part.substring(colon + 1).split("[\\s,]+")).filter(band -> !band.isEmpty())
                    .toList();
            if (bands.isEmpty()) {
                throw new IllegalArgumentException(TEXTS.text("allowances.noband", "part", part.strip()));
            }
            Allowance allowance = StraddleFactory.eINSTANCE.createAllowance();
            allowance.setLicenceClass(part.substring(0, colon).strip());
            allowance.getBands().addAll(bands);
            allowances.add(allowance);
        }
        return allowances;
    }
}
