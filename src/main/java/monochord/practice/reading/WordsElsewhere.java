package monochord.practice.reading;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * What musicians of other countries call intervals, qualities and signs, put into English word by word: German, and the
 * Romance languages whose notes are syllables. Source: the names as the dictionaries of those languages give them, from
 * memory; none of them means anything in English.
 */
final class WordsElsewhere {
    /** As Germans say them; alone the word is an English one. */
    private static final Pattern COUNTED_FLATS =
            Pattern.compile("(?i)(?<=(?:ein|zwei|drei|vier|fünf|sechs|sieben|[1-7]) )be(?![a-z])");

    private static final Map<String, String> ENGLISH = new HashMap<>();

    static {
        add("minor", "moll", "mineur", "mineure", "minore", "menor", "klein", "kleine", "kleiner", "kl");
        add(
                "major",
                "dur",
                "majeur",
                "majeure",
                "maggiore",
                "mayor",
                "maior",
                "groß",
                "große",
                "großer",
                "grosse",
                "gross");
        add("perfect", "rein", "reine", "reiner", "juste", "giusta", "justa");
        add("diminished", "vermindert", "verminderte", "verminderter", "diminué", "diminuée", "diminuito", "diminuita");
        add("diminished", "disminuido", "disminuida");
        add("augmented", "übermäßig", "übermäßige", "übermäßiger", "uebermaessig", "uebermaessige", "augmenté");
        add("augmented", "augmentée", "aumentato", "aumentata", "aumentado", "aumentada");
        add("half-diminished", "halbvermindert", "halbverminderter");
        add("natural", "naturel", "naturelle", "naturale", "natürlich");
        add("unison", "prime", "unisson", "unisono");
        add("second", "sekunde", "sekund", "seconde", "seconda", "segunda", "zweite", "deuxième");
        add("third", "terz", "tierce", "terza", "tercera", "dritte", "troisième");
        add("fourth", "quarte", "quart", "quarta", "cuarta", "vierte", "quatrième");
        add("fifth", "quinte", "quint", "quinta", "fünfte", "cinquième");
        add("sixth", "sexte", "sext", "sixte", "sesta", "sexta", "sechste", "sixième");
        add("seventh", "septime", "septim", "septième", "settima", "séptima", "siebte", "siebente");
        add("octave", "oktave", "oktav", "ottava", "octava");
        add("first", "erste", "premier", "première", "primo", "prima");
        add("inversion", "umkehrung", "renversement", "rivolto", "inversión");
        add("root position", "grundstellung");
        add("degree", "stufe", "degré", "grado");
        add("chord", "akkord", "accord", "accordo", "acorde");
        add("triad", "dreiklang");
        add("seventh chord", "septakkord", "septimakkord");
        add("dominant seventh", "dominantseptakkord", "dominantseptimakkord");
        add("none", "keine", "keins", "kein", "aucun", "aucune", "nessuno", "nessuna", "ninguno", "ninguna");
        add("", "vorzeichen");
        add("sharps", "kreuze", "kreuz", "dièses", "dièse", "diesis", "sostenidos");
        add("flats", "been", "bémols", "bemolli", "bemoles");
        add("and", "und", "et");
        add("with", "mit", "avec", "con");
        add("over", "über", "sur", "sopra");
        add("in the", "im");
        add("whole", "ganz", "ganzton", "ganztonschritt", "ton");
        add("half", "halb", "halbton", "halbtonschritt", "semiton", "semitono");
        add("two", "zwei", "deux", "dos");
        add("three", "drei", "trois", "tre", "tres");
        add("four", "vier", "quatre", "quattro", "cuatro");
        add("five", "fünf", "cinq", "cinque", "cinco");
        add("six", "sechs", "sei", "seis");
        add("seven", "sieben", "sept", "sette", "siete");
        add("contrary", "gegenbewegung", "contraire", "contrario");
        add("oblique", "seitenbewegung", "obliquo");
        add("parallel", "parallelbewegung", "parallele", "parallelo");
        add("similar", "gleichbewegung", "semblable", "directe");
        add("suspension", "vorhalt", "retard", "ritardo");
        add("one", "eins", "ein", "un", "une", "uno", "una");
    }

    private WordsElsewhere() {}

    private static void add(String english, String... words) {
        for (String word : words) {
            ENGLISH.put(word, english);
        }
    }

    /** The text with each such word in English; what is none stays. */
    static String english(String text) {
        String whole = text.indexOf("emi") < 0 ? text : text.replaceAll("(?i)demi[ -]tons?", "semiton");
        whole = COUNTED_FLATS.matcher(whole).replaceAll("flats");
        StringBuilder english = null;
        int done = 0;
        int from = 0;
        while (from < whole.length()) {
            int to = from;
            while (to < whole.length() && Character.isLetter(whole.charAt(to))) {
                to++;
            }
            String word =
                    to - from < 2 ? null : ENGLISH.get(whole.substring(from, to).toLowerCase(Locale.ROOT));
            if (word != null) {
                english = english == null ? new StringBuilder() : english;
                english.append(whole, done, from).append(word);
                done = to;
            }
            from = to + 1;
        }
        return english == null
                ? whole
                : english.append(whole, done, whole.length()).toString();
    }
}
