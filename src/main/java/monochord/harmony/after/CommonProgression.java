package monochord.harmony.after;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.TriadQuality;

/**
 * Ways on that players and textbooks know, by the degrees of the major scale; in minor the tonic chord is the minor one.
 *
 * <p>Sources: Open Music Theory (Shaffer, Hughes, Moseley, 2014), pages "cadenceTypes", "harmonicFunctions",
 * "modalMixture", "alteredSubdominants" and "popRockHarmony", CC BY-SA 4.0; Integrated Music Theory (open university
 * course text), lessons 11b and 16a. The weights are ours.
 *
 * @param weight from 1, merely usual, to 6, the way everyone expects
 * @param reason a clause, its numerals as the key has them
 */
record CommonProgression(int weight, Phrase reason) {
    /** The habit that leads from one chord to another, if there is one. */
    static Optional<CommonProgression> of(Numeral from, Numeral to, Key key) {
        boolean leadsElsewhere = from.target() != null || to.target() != null || isSuspended(to, key);
        List<String> first = names(from, key, "i", "I");
        List<String> second = names(to, key, "I", "i");
        CommonProgressionTable table = new CommonProgressionTable(key);
        return leadsElsewhere
                ? Optional.empty()
                : first.stream()
                        .flatMap(name -> second.stream().map(next -> table.find(name, next)))
                        .filter(Objects::nonNull)
                        .findFirst();
    }

    /**
     * A suspended chord goes where its major chord goes; in minor the minor chord on 1 is the tonic.
     *
     * @param minorTonic the names it is looked up by, the nearer first
     */
    private static List<String> names(Numeral numeral, Key key, String... minorTonic) {
        Numeral triad = isSuspended(numeral, key)
                ? Numeral.of(numeral.degree(), numeral.alteration(), ChordKind.MAJOR)
                : numeral;
        List<String> names = SongCounts.names(triad, key);
        return key.isMinor() && names.contains("i") ? List.of(minorTonic) : names;
    }

    private static boolean isSuspended(Numeral numeral, Key key) {
        return numeral.in(key).kind().quality() == TriadQuality.SUSPENDED;
    }
}
