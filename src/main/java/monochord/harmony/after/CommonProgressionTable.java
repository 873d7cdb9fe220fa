package monochord.harmony.after;

import java.util.stream.Stream;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;

/** All habits by the chord they start from, their numerals as one key has them; sources and weights: {@link CommonProgression}. */
record CommonProgressionTable(Key key) {
    /** @return null if no habit leads there */
    CommonProgression find(String from, String to) {
        return switch (from) {
            case "bVI" -> fromLoweredSixth(to);
            case "bVII" -> fromLoweredSeventh(to);
            case "bIII" -> fromLoweredThird(to);
            case "iv" -> fromMinorFour(to);
            case "I" -> fromOne(to);
            case "i" -> fromMinorOne(to);
            case "V" -> fromFive(to);
            case "v" -> fromMinorFive(to);
            case "IV" -> fromFour(to);
            case "ii" -> fromTwo(to);
            case "iii" -> fromThree(to);
            case "vi" -> fromSix(to);
            default -> fromOthers(from + "-" + to);
        };
    }

    private CommonProgression fromLoweredSixth(String to) {
        return switch (to) {
            case "bVII" -> habit(6, Phrase.of("the walk up {0}", inKey("bVI", "bVII", "I")));
            case "V" -> habit(5, Phrase.of("the root sinks a half step onto the dominant"));
            case "bIII" ->
                habit(4, Phrase.of("fourths falling all the way home, {0}", inKey("bVI", "bIII", "bVII", "IV", "I")));
            case "bII" -> habit(3, Phrase.of("the root falls a fifth, darker still"));
            case "iv" -> habit(3, Phrase.of("the root falls a third, two tones stay"));
            case "IV" -> habit(3, Phrase.of("the root falls a third into the major subdominant"));
            case "I" -> habit(4, Phrase.of("straight home by a third, around the tonic that both share"));
            default -> null;
        };
    }

    private CommonProgression fromLoweredSeventh(String to) {
        return switch (to) {
            case "I" -> habit(6, Phrase.of("the last step of the walk up {0}", inKey("bVI", "bVII", "I")));
            case "IV" -> habit(6, Phrase.of("the double plagal way home: {0}", inKey("bVII", "IV", "I")));
            case "bVI" -> habit(3, Phrase.of("back down the walk: {0}, then the dominant", inKey("bVII", "bVI")));
            case "bIII" -> habit(3, Phrase.of("the root falls a fifth, as if {0} were home", inKey("bIII")));
            case "V" -> habit(3, Phrase.of("from the lowered seventh to the leading note: the dominant after all"));
            default -> null;
        };
    }

    private CommonProgression fromLoweredThird(String to) {
        return switch (to) {
            case "bVII" -> habit(4, Phrase.of("fourths falling, {0}", inKey("bIII", "bVII", "IV", "I")));
            case "IV" -> habit(4, Phrase.of("the root climbs a whole step into the major subdominant"));
            case "bVI" -> habit(4, Phrase.of("the root falls a fifth"));
            case "I" -> habit(3, Phrase.of("straight home by a third, around the fifth that both share"));
            default -> null;
        };
    }

    private CommonProgression fromMinorFour(String to) {
        return switch (to) {
            case "I" ->
                habit(6, Phrase.of("the minor plagal way home: the lowered sixth sinks a half step to the fifth"));
            case "V" -> habit(5, Phrase.of("the lowered sixth sinks into the dominant"));
            case "bVII" -> habit(4, Phrase.of("the root falls a fifth"));
            case "iio" -> habit(3, Phrase.of("the same function, two tones stay"));
            case "bII" -> habit(3, Phrase.of("the root falls a third: two tones stay"));
            case "viio" -> habit(3, Phrase.of("from subdominant to dominant, the lowered sixth stays"));
            default -> null;
        };
    }

    private CommonProgression fromOne(String to) {
        return switch (to) {
            case "IV" -> habit(5, Phrase.of("the root falls a fifth, out to the subdominant"));
            case "V" -> habit(5, Phrase.of("out to the dominant"));
            case "vi" -> habit(4, Phrase.of("the root falls a third: two tones stay"));
            case "ii" -> habit(3, Phrase.of("a whole step up into the subdominant"));
            case "iii" -> habit(2, Phrase.of("two tones stay: the softest step"));
            case "bVII" ->
                habit(
                        4,
                        Phrase.of(
                                "out by a whole step, to come back through {0}: {1}",
                                inKey("IV"), inKey("I", "bVII", "IV", "I")));
            case "bVI" -> habit(3, Phrase.of("a colour by a third: the tonic stays as its third"));
            case "bIII" -> habit(2, Phrase.of("a colour by a third: the fifth stays as its third"));
            case "bII" -> habit(2, Phrase.of("a half step up into the darkest of the borrowed chords"));
            case "v" -> habit(3, Phrase.of("out to the fifth without its leading note"));
            case "i" -> habit(2, Phrase.of("only the third moves: the light changes"));
            case "iio" -> habit(2, Phrase.of("a whole step up into the subdominant with its lowered sixth"));
            case "viio" -> habit(2, Phrase.of("out to the leading-note chord"));
            case "II" -> habit(2, Phrase.of("a whole step up, and the raised fourth leans on the fifth"));
            case "vii" -> habit(1, Phrase.of("down a half step"));
            case "iv" -> habit(3, Phrase.of("the subdominant with its third lowered"));
            default -> null;
        };
    }

    private CommonProgression fromMinorOne(String to) {
        return switch (to) {
            case "V" -> habit(5, Phrase.of("the dominant leads both modes home"));
            case "I" -> habit(3, Phrase.of("only the third moves: the light changes"));
            case "iv" -> habit(5, Phrase.of("the root falls a fifth"));
            case "IV" -> habit(3, Phrase.of("the subdominant with the raised sixth in it: the dorian colour"));
            case "bIII" -> habit(3, Phrase.of("the root rises a third: two tones stay, and the light comes in"));
            case "bVI" -> habit(4, Phrase.of("two tones stay"));
            case "bVII" -> habit(4, Phrase.of("a whole step down"));
            default -> null;
        };
    }

    private CommonProgression fromFive(String to) {
        return switch (to) {
            case "I" -> habit(6, Phrase.of("home: the leading note rises, the root falls a fifth"));
            case "vi" -> habit(4, Phrase.of("deceptive: {0} where the tonic was expected", inKey("vi")));
            case "bVI" -> habit(4, Phrase.of("deceptive: {0} where the tonic was expected", inKey("bVI")));
            case "IV" ->
                habit(
                        3,
                        Phrase.of(
                                "it steps back to {0}: at home in rock and blues, rare in classical music",
                                inKey("IV")));
            case "ii" -> habit(2, Phrase.of("it steps back for another run-up"));
            case "iv" -> habit(2, Phrase.of("it steps back, and the sixth is lowered for the way home"));
            case "i" -> habit(4, Phrase.of("home, but into the minor mode"));
            default -> null;
        };
    }

    private CommonProgression fromMinorFive(String to) {
        return switch (to) {
            case "IV" -> habit(4, Phrase.of("no leading note pulls, so it steps down through {0}", inKey("IV")));
            case "I" -> habit(4, Phrase.of("home without a leading note, soft"));
            case "bVII" -> habit(3, Phrase.of("the root rises a third, two tones stay"));
            default -> null;
        };
    }

    private CommonProgression fromFour(String to) {
        return switch (to) {
            case "I" -> habit(5, Phrase.of("plagal: home around the tonic that both share"));
            case "V" -> habit(5, Phrase.of("from subdominant to dominant, the step before home"));
            case "iv" ->
                habit(4, Phrase.of("its third slips down a half step on the way home: {0}", inKey("IV", "iv", "I")));
            case "ii" -> habit(3, Phrase.of("the same function, softer: two tones stay"));
            case "vi" -> habit(2, Phrase.of("the root rises a third: two tones stay"));
            case "bVII" -> habit(2, Phrase.of("one fourth further out: {0}", inKey("IV", "bVII", "IV", "I")));
            case "viio" -> habit(3, Phrase.of("from subdominant to dominant, the step before home"));
            case "bVI" -> habit(2, Phrase.of("the root rises a third: the tonic stays"));
            case "bIII" -> habit(2, Phrase.of("a whole step down into the colour"));
            case "II" -> habit(1, Phrase.of("the root falls a third, the fourth is raised"));
            default -> null;
        };
    }

    private CommonProgression fromTwo(String to) {
        return switch (to) {
            case "V" -> habit(6, Phrase.of("the root falls a fifth: {0}", inKey("ii", "V", "I")));
            case "IV" -> habit(2, Phrase.of("the same function, two tones stay"));
            case "I" -> habit(2, Phrase.of("straight home, as {0} would go", inKey("IV")));
            case "viio" -> habit(3, Phrase.of("from subdominant to dominant, the step before home"));
            case "iio" -> habit(2, Phrase.of("its fifth slips down a half step"));
            case "bII" -> habit(2, Phrase.of("the root slips down a half step"));
            case "v" -> habit(1, Phrase.of("the root falls a fifth, and no leading note comes"));
            default -> null;
        };
    }

    private CommonProgression fromThree(String to) {
        return switch (to) {
            case "vi" -> habit(5, Phrase.of("the root falls a fifth, along the circle"));
            case "IV" -> habit(4, Phrase.of("a half step up into the subdominant"));
            case "ii" -> habit(2, Phrase.of("a whole step down the scale"));
            default -> null;
        };
    }

    private CommonProgression fromSix(String to) {
        return switch (to) {
            case "IV" -> habit(5, Phrase.of("the root falls a third: two tones stay"));
            case "ii" -> habit(5, Phrase.of("the root falls a fifth, along the circle"));
            case "V" -> habit(4, Phrase.of("a whole step down onto the dominant"));
            case "iii" -> habit(2, Phrase.of("the root falls a fourth: two tones stay"));
            case "I" -> habit(2, Phrase.of("back up a third: two tones stay"));
            case "bVI" -> habit(2, Phrase.of("the root slips down a half step, the tonic stays"));
            case "iv" -> habit(2, Phrase.of("the root falls a third: the tonic stays, the sixth slips down"));
            case "II" -> habit(2, Phrase.of("the root falls a fifth, the fourth is raised"));
            default -> null;
        };
    }

    private CommonProgression fromOthers(String both) {
        return switch (both) {
            case "II-V" -> habit(5, Phrase.of("the root falls a fifth, the raised fourth rises to the fifth"));
            case "II-IV" ->
                habit(3, Phrase.of("the raised fourth slips back down: a rock habit, rare in classical music"));
            case "bII-V" -> habit(6, Phrase.of("the lowered second before the dominant, as the Neapolitan chord does"));
            case "bII-I" -> habit(4, Phrase.of("the root sinks a half step home"));
            case "iio-V" ->
                habit(6, Phrase.of("the root falls a fifth: {0} with the lowered sixth in it", inKey("iio", "V", "I")));
            case "iio-I" -> habit(3, Phrase.of("the lowered sixth sinks home, as in the minor plagal way"));
            case "viio-I" -> habit(6, Phrase.of("home: the leading note rises a half step"));
            case "viio-iii" -> habit(2, Phrase.of("the root falls a fifth, along the circle"));
            case "vii-I" -> habit(1, Phrase.of("up a half step, home"));
            case "vii-iii" -> habit(2, Phrase.of("the root falls a fifth, along the circle"));
            case "bvii-I" -> habit(2, Phrase.of("a whole step up, home"));
            case "bvii-IV" -> habit(2, Phrase.of("the root falls a fourth: the light returns"));
            default -> null;
        };
    }

    private static CommonProgression habit(int weight, Phrase reason) {
        return new CommonProgression(weight, reason);
    }

    /** Numerals counted from the major scale, as the key has them. */
    private Phrase inKey(String... numerals) {
        return Phrase.row(Stream.of(numerals).map(this::numeral).toList());
    }

    private Numeral numeral(String name) {
        Numeral counted = Numeral.parse(name.equals("I") && key.isMinor() ? "i" : name);
        Chord chord = counted.in(Key.major(key.tonic()));
        return Numeral.onDegree(chord, key);
    }
}
