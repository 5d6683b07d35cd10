package org.straddle.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** One run of the command line, as somebody at a terminal sees it. */
record Console(int code, String out, String err) {

    static Console run(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = new String[arguments.length];
        for (int i = 0; i < words.length; i++) {
            words[i] = arguments[i].toString();
        }
        int code = StraddleCommand.run(new PrintWriter(out), new PrintWriter(err), words);
        return new Console(code, out.toString(), err.toString());
    }
}
