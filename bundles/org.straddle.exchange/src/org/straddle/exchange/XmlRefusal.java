package org.straddle.exchange;

import org.xml.sax.SAXException;

/** Carries a refusal out through an XML parser, which lets nothing else pass. */
public final class XmlRefusal extends SAXException {

    private static final long serialVersionUID = 1L;

    private final ReadException refusal;

    public XmlRefusal(ReadException refusal) {
        super(refusal);
        this.refusal = refusal;
    }

    public ReadException refusal() {
        return refusal;
    }
}
