package monochord.shell.verb.keeping;

import java.util.Optional;
import monochord.text.Phrase;

/** Which version of the program runs, on which Java. */
public final class Version {
    private Version() {}

    /** What the jar says of itself; classes outside a jar are in the making. */
    public static Phrase told() {
        Phrase number = Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
                .map(Phrase::typed)
                .orElse(Phrase.of("in the making"));
        return Phrase.of(
                "Monochord {0}; Java {1} of {2}; {3} {4}",
                number, property("java.version"), property("java.vendor"), property("os.name"), property("os.arch"));
    }

    private static Phrase property(String name) {
        return Phrase.typed(System.getProperty(name, "?"));
    }
}
