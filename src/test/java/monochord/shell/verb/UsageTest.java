package monochord.shell.verb;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The grammar of every verb, as help shows it and as sentences are read. */
class UsageTest {
    private static final String PLAYED =
            " [metre 3/4] [as PATTERN] [at BPM] [with PATCH] [swing] [loop N] [count-in] [--wav FILE] [--midi FILE] [--over]";
    private static final List<String> FORMS = List.of(
            "key [KEY], or key of MUSIC [over PROGRESSION] [in KEY], or key --file LEADSHEET",
            "harmonise MELODY [in KEY] [metre 3/4], or harmonise [CHORDS] under NOTE [in KEY],"
                    + " or harmonise --file LEADSHEET [--wav FILE] [--midi FILE] [--over]",
            "show CHORD, SCALE, NOTES or PROGRESSION [in KEY] [staff --svg OUT [--over]]",
            "name NOTES [in KEY]",
            "numeral NUMERAL, NUMBER or CHORD [in KEY]",
            "borrow [MODE or CHORD] [in KEY]",
            "after NUMERAL, NUMBER or CHORD [in KEY]",
            "motion VOICES | VOICES or PROGRESSION [in KEY] [chorale or band]",
            "fit MELODY over PROGRESSION [in KEY], or fit --file LEADSHEET [--wav FILE] [--midi FILE] [--over]",
            "recolour PROGRESSION [in KEY] [under MELODY] [metre 3/4] [with IDIOM [at NUMBER]] [more or bold] [loop or open],"
                    + " or recolour --file LEADSHEET [--wav FILE] [--midi FILE] [--over]",
            "voice PROGRESSION [in KEY] [close, spread, shell, choir or alone] [with bass] [under tune] [drop 2]"
                    + " [five or six] [reach KEYS] [melody TUNE] [--wav FILE] [--midi FILE] [--over] [staff --svg OUT [--over]]",
            "transpose PROGRESSION [from KEY] to KEY, or for INSTRUMENT, or capo [FRET],"
                    + " or transpose MELODY to sing RANGE, or for VOICE [with INSTRUMENT]",
            "song [FILE] [tune NAME] [--out FILE] [--abc FILE] [--midi FILE] [--over]",
            "change PLACE to CHORDS [because TEXT], or change NUMBER, or change key to KEY",
            "undo",
            "rehearse PLACE or PROGRESSION [in KEY] [with PART] [metre 3/4] [as PATTERN] [at BPM] [swing] [for MINUTES],"
                    + " or rehearse keys [KEYS]",
            "bass PROGRESSION [chromatic, pedal or walking] [in KEY] [metre 3/4]",
            "play [PART of] MUSIC [over CHORDS] [in KEY]" + PLAYED,
            "compare MUSIC vs MUSIC [over CHORDS] [in KEY]" + PLAYED + ", or compare this, first or second",
            "tempo [BPM] [--keep]",
            "patch [PATCH] [left or right] [--keep]",
            "bank [FILE or own]",
            "keys [NUMBER, NAME or off]",
            "stop",
            "hear [interval, quality, progression or dictation] [in KEY] [--wav FILE] [--midi FILE] [--over]",
            "lessons [BOOK]",
            "learn [LESSON or FILE] [in KEY] [as CODE]",
            "ask SKILL [of SUBJECT] [in KEY, or from KEY to KEY] [for INSTRUMENT] [--answer TEXT]",
            "practise [SKILL] [in KEYS]",
            "skills",
            "review [MINUTES]",
            "progress [--csv]",
            "hint",
            "tell",
            "why",
            "skip",
            "notes [english, german or latin]",
            "check [FILE …] [--trust]",
            "present LESSON [in KEY]",
            "back",
            "note TEXT",
            "save [FILE] [--over]",
            "open FILE or draft [--trust]",
            "replay FILE … [--accept] [--trust]",
            "publish FILE or LESSON --html OUT [--trust] [--over]",
            "sheet chords or scales, or voicings PROGRESSION, or questions SKILL, or LESSON or FILE [as CODE] [in KEYS] [count NUMBER] [copies NUMBER] [lines, staves or keyboards] [letter] [--html OUT] [--pdf OUT] [--svg OUT] [--over]",
            "chart [PROGRESSION] [in KEY] [for INSTRUMENT] [numerals or numbers] [tune] [letter] [--html OUT] [--pdf OUT] [--svg OUT] [--over] [--musicxml OUT]",
            "settings [TEXT, tempo, right patch, left patch, bank, notes or code seconds]",
            "assign SKILL, or LESSON, or song PLACE [in KEYS] [count NUMBER] [called TEXT] [for NAME] [due YYYY-MM-DD] [tries NUMBER] [each] [unaided] [later] [saying TEXT] --out OUT [--over]",
            "mark FILE … [with FILE] [as CODE] [--feedback FOLDER] [--csv OUT] [--over]",
            "class [CODE or GROUP] [over ASSIGNMENT/WEEKS] [letter] [--html OUT] [--pdf OUT] [--svg OUT] [--over], or class forget CODE, or class list, or class copy FILE, or class join FILE",
            "answers [FILE, copy or restore] [--over]",
            "doctor",
            "help [VERB, TOPIC, enter, music, song-file, java, ears, hands or band]",
            "quit");

    private static Usage usage(String word) {
        return new Verbs().find(word).orElseThrow().usage();
    }

    @Test
    @DisplayName("every verb shows its form")
    void everyVerbShowsItsForm() {
        assertEquals(
                Set.copyOf(FORMS),
                Set.copyOf(new Verbs()
                        .all().stream()
                                .map(verb -> verb.usage().form().toString())
                                .toList()));
    }

    @Test
    @DisplayName("what a form shows in small letters is read, and what is read beside it is not shown")
    void aFormIsWhatIsRead() {
        assertEquals(
                Set.of("over", "in", "metre", "as", "at", "with", "swing", "loop", "count-in"),
                usage("play").smallWords());
        assertEquals(Set.of("wav", "midi", "over"), usage("play").options());
        assertTrue(usage("compare").smallWords().containsAll(Set.of("vs", "versus")));
        assertEquals(
                Set.of("in", "from", "to", "for", "capo", "sing", "with"),
                usage("transpose").smallWords());
        assertEquals(
                Set.of("seed", "answer", "wav", "midi", "over"), usage("ask").options());
        assertEquals(Set.of(), usage("quit").smallWords());
        assertEquals(
                "Eb",
                Sentence.parse("C F to Eb", usage("transpose"))
                        .clause("to")
                        .orElseThrow()
                        .text());
    }

    @Test
    @DisplayName("a verb that takes nothing shows no form in a refusal")
    void aVerbAloneHasNoForm() {
        assertEquals("", usage("quit").formIfAny().toString());
        assertEquals("Form: tempo [BPM] [--keep]", usage("tempo").formIfAny().toString());
    }
}
