package org.straddle.exchange.elements;

/** The written forms of element sets. */
public enum ElementFormat {

    TLE("two-line element sets"),
    OMM_KVN("orbit mean-elements messages, keyword = value"),
    OMM_XML("orbit mean-elements messages, XML"),
    OMM_JSON("orbit mean-elements, JSON"),
    OMM_CSV("orbit mean-elements, CSV");

    private final String label;

    ElementFormat(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
