package org.straddle.cli;

/** What a run of the command line printed, and how it ended. */
record Console(int code, String out, String err) {
}
