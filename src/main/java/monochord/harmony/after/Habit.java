package monochord.harmony.after;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Signs;
import monochord.theory.TriadQuality;

/**
 * A way on that players and textbooks know, by the degrees of the major scale; in minor the tonic chord is the minor one.
 *
 * <p>Sources: Open Music Theory (Shaffer, Hughes, Moseley, 2014), pages "cadenceTypes", "harmonicFunctions",
 * "modalMixture", "alteredSubdominants" and "popRockHarmony", CC BY-SA 4.0; Integrated Music Theory (open university
 * course text), lessons 11b and 16a. The weights are ours.
 *
 * @param weight from 1, merely usual, to 6, the way everyone expects
 * @param reason a clause; numerals between braces are written as the key has them
 */
record Habit(String from, String to, int weight, String reason) {
    private static final Pattern NUMERALS = Pattern.compile("\\{([^}]*)}");

    private static final Map<String, Habit> ALL =
            """
            bVI  | bVII | 6 | the walk up {bVI bVII I}
            bVII | I    | 6 | the last step of the walk up {bVI bVII I}
            bVII | IV   | 6 | the double plagal way home: {bVII IV I}
            bVII | bVI  | 3 | back down the walk: {bVII bVI}, then the dominant
            bVII | bIII | 3 | the root falls a fifth, as if {bIII} were home
            bVII | V    | 3 | from the lowered seventh to the leading note: the dominant after all
            bVI  | V    | 5 | the root sinks a half step onto the dominant
            bVI  | bIII | 4 | fourths falling all the way home, {bVI bIII bVII IV I}
            bVI  | bII  | 3 | the root falls a fifth, darker still
            bVI  | iv   | 3 | the root falls a third, two tones stay
            bVI  | IV   | 3 | the root falls a third into the major subdominant
            bVI  | I    | 4 | straight home by a third, around the tonic that both share
            bIII | bVII | 4 | fourths falling, {bIII bVII IV I}
            bIII | IV   | 4 | the root climbs a whole step into the major subdominant
            bIII | bVI  | 4 | the root falls a fifth
            bIII | I    | 3 | straight home by a third, around the fifth that both share
            iv   | I    | 6 | the minor plagal way home: the lowered sixth sinks a half step to the fifth
            iv   | V    | 5 | the lowered sixth sinks into the dominant
            iv   | bVII | 4 | the root falls a fifth
            iio  | V    | 6 | the root falls a fifth: {iio V I} with the lowered sixth in it
            iio  | I    | 3 | the lowered sixth sinks home, as in the minor plagal way
            bII  | V    | 6 | the lowered second before the dominant, as the Neapolitan chord does
            bII  | I    | 4 | the root sinks a half step home
            v    | IV   | 4 | no leading note pulls, so it steps down through {IV}
            v    | I    | 4 | home without a leading note, soft
            v    | bVII | 3 | the root rises a third, two tones stay
            i    | V    | 5 | the dominant leads both modes home
            i    | I    | 3 | only the third moves: the light changes
            i    | iv   | 5 | the root falls a fifth
            i    | IV   | 3 | the subdominant with the raised sixth in it: the dorian colour
            i    | bIII | 3 | the root rises a third: two tones stay, and the light comes in
            i    | bVI  | 4 | two tones stay
            i    | bVII | 4 | a whole step down
            V    | I    | 6 | home: the leading note rises, the root falls a fifth
            V    | vi   | 4 | deceptive: {vi} where the tonic was expected
            V    | bVI  | 4 | deceptive: {bVI} where the tonic was expected
            V    | IV   | 3 | it steps back to {IV}: at home in rock and blues, rare in classical music
            V    | ii   | 2 | it steps back for another run-up
            V    | iv   | 2 | it steps back, and the sixth is lowered for the way home
            IV   | I    | 5 | plagal: home around the tonic that both share
            IV   | V    | 5 | from subdominant to dominant, the step before home
            IV   | iv   | 4 | its third slips down a half step on the way home: {IV iv I}
            IV   | ii   | 3 | the same function, softer: two tones stay
            IV   | vi   | 2 | the root rises a third: two tones stay
            IV   | bVII | 2 | one fourth further out: {IV bVII IV I}
            ii   | V    | 6 | the root falls a fifth: {ii V I}
            ii   | IV   | 2 | the same function, two tones stay
            ii   | I    | 2 | straight home, as {IV} would go
            iii  | vi   | 5 | the root falls a fifth, along the circle
            iii  | IV   | 4 | a half step up into the subdominant
            iii  | ii   | 2 | a whole step down the scale
            vi   | IV   | 5 | the root falls a third: two tones stay
            vi   | ii   | 5 | the root falls a fifth, along the circle
            vi   | V    | 4 | a whole step down onto the dominant
            vi   | iii  | 2 | the root falls a fourth: two tones stay
            vi   | I    | 2 | back up a third: two tones stay
            viio | I    | 6 | home: the leading note rises a half step
            viio | iii  | 2 | the root falls a fifth, along the circle
            I    | IV   | 5 | the root falls a fifth, out to the subdominant
            I    | V    | 5 | out to the dominant
            I    | vi   | 4 | the root falls a third: two tones stay
            I    | ii   | 3 | a whole step up into the subdominant
            I    | iii  | 2 | two tones stay: the softest step
            I    | bVII | 4 | out by a whole step, to come back through {IV}: {I bVII IV I}
            I    | bVI  | 3 | a colour by a third: the tonic stays as its third
            I    | bIII | 2 | a colour by a third: the fifth stays as its third
            I    | bII  | 2 | a half step up into the darkest of the borrowed chords
            I    | v    | 3 | out to the fifth without its leading note
            I    | i    | 2 | only the third moves: the light changes
            I    | iio  | 2 | a whole step up into the subdominant with its lowered sixth
            I    | viio | 2 | out to the leading-note chord
            I    | II   | 2 | a whole step up, and the raised fourth leans on the fifth
            I    | vii  | 1 | down a half step
            V    | i    | 4 | home, but into the minor mode
            IV   | viio | 3 | from subdominant to dominant, the step before home
            IV   | bVI  | 2 | the root rises a third: the tonic stays
            IV   | bIII | 2 | a whole step down into the colour
            IV   | II   | 1 | the root falls a third, the fourth is raised
            ii   | viio | 3 | from subdominant to dominant, the step before home
            ii   | iio  | 2 | its fifth slips down a half step
            ii   | bII  | 2 | the root slips down a half step
            ii   | v    | 1 | the root falls a fifth, and no leading note comes
            iv   | iio  | 3 | the same function, two tones stay
            iv   | bII  | 3 | the root falls a third: two tones stay
            iv   | viio | 3 | from subdominant to dominant, the lowered sixth stays
            vi   | bVI  | 2 | the root slips down a half step, the tonic stays
            vi   | iv   | 2 | the root falls a third: the tonic stays, the sixth slips down
            vi   | II   | 2 | the root falls a fifth, the fourth is raised
            II   | V    | 5 | the root falls a fifth, the raised fourth rises to the fifth
            II   | IV   | 3 | the raised fourth slips back down: a rock habit, rare in classical music
            vii  | I    | 1 | up a half step, home
            vii  | iii  | 2 | the root falls a fifth, along the circle
            bvii | I    | 2 | a whole step up, home
            bvii | IV   | 2 | the root falls a fourth: the light returns
            I    | iv   | 3 | the subdominant with its third lowered
            """.lines().map(Habit::row).collect(Collectors.toMap(habit -> habit.from + " " + habit.to, habit -> habit));

    private static Habit row(String line) {
        String[] cells = Arrays.stream(line.split("\\|")).map(String::strip).toArray(String[]::new);
        return new Habit(cells[0], cells[1], Integer.parseInt(cells[2]), cells[3]);
    }

    /** The habit that leads from one chord to another, if there is one. */
    static Optional<Habit> of(Numeral from, Numeral to, Key key) {
        boolean leadsElsewhere = from.target() != null || to.target() != null || isSuspended(to, key);
        List<String> first = names(from, key, "i", "I");
        List<String> second = names(to, key, "I", "i");
        return leadsElsewhere
                ? Optional.empty()
                : first.stream()
                        .flatMap(name -> second.stream().map(next -> ALL.get(name + " " + next)))
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

    /** The reason with its numerals as the key has them. */
    String reason(Key key) {
        return NUMERALS.matcher(reason)
                .replaceAll(found -> Arrays.stream(found.group(1).split(" "))
                        .map(name -> inKey(name, key))
                        .collect(Collectors.joining(" ")));
    }

    private static String inKey(String name, Key key) {
        Chord chord =
                Numeral.parse(name.equals("I") && key.isMinor() ? "i" : name).in(Key.major(key.tonic()));
        return Numeral.onDegree(chord, key).write(Signs.MUSIC);
    }
}
