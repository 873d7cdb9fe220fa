package monochord.shell.verb.keeping;

import monochord.text.Phrase;

/**
 * One thing that was looked at.
 *
 * @param what its name, as in the first column
 * @param key its name for programs
 * @param state how it is, as a clause
 * @param isWell whether all that wants it can have it
 * @param advice what to do where it is not well, or nothing
 */
record Finding(Phrase what, String key, Phrase state, boolean isWell, Phrase advice) {
    static Finding well(Phrase what, String key, Phrase state) {
        return new Finding(what, key, state, true, Phrase.NOTHING);
    }

    static Finding missing(Phrase what, String key, Phrase state, Phrase advice) {
        return new Finding(what, key, state, false, advice);
    }
}
