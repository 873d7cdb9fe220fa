package monochord.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Clause;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class PhraseTest {
    private static final Reader GERMAN = Reader.of(Signs.MUSIC.with(NoteNaming.GERMAN));
    private static final Reader LATIN = Reader.of(Signs.MUSIC.with(NoteNaming.LATIN));
    private static final Reader ASCII = Reader.of(Signs.ASCII);

    private static String said(Phrase phrase, Reader reader) {
        return phrase.in(reader).plain();
    }

    private static NoteName note(String name) {
        return NoteName.parse(name);
    }

    @Test
    @DisplayName("music goes by the reader's signs and names; words stay")
    void musicGoesByTheReader() {
        Phrase phrase = Phrase.sentence(
                "{0} holds {1}, the fifth of {2}.", Chord.parse("Bbmaj7"), note("F"), Key.parse("Bb minor"));
        assertEquals("B♭maj7 holds F, the fifth of B♭ minor.", phrase.toString());
        assertEquals("Bbmaj7 holds F, the fifth of Bb minor.", said(phrase, ASCII));
        assertEquals("Bmaj7 holds F, the fifth of B minor.", said(phrase, GERMAN));
        assertEquals("Si♭maj7 holds Fa, the fifth of Si♭ minor.", said(phrase, LATIN));
    }

    @Test
    @DisplayName("an article is never taken for a note")
    void anArticleIsNoNote() {
        Phrase phrase = Phrase.sentence("A step up from {0}, or a step down.", note("A"));
        assertEquals("A step up from La, or a step down.", said(phrase, LATIN));
    }

    @Test
    @DisplayName("a sentence begins with a capital where it begins with a word, and only there")
    void aSentenceBeginsWithACapital() {
        assertEquals(
                "The left hand stays.",
                Phrase.sentence("{0} stays.", Phrase.of("the left hand")).toString());
        assertEquals(
                "The left hand and the right hand stay.",
                Phrase.sentence(
                                "{0} stay.",
                                Phrase.list(List.of(Phrase.of("the left hand"), Phrase.of("the right hand"))))
                        .toString());
        assertEquals(
                "vi stays.", Phrase.sentence("{0} stays.", Numeral.parse("vi")).toString());
        assertEquals(
                "♭6 stays.", Phrase.sentence("{0} stays.", Degree.parse("b6")).toString());
        assertEquals(
                "eb stays.", Phrase.sentence("{0} stays.", Phrase.typed("eb")).toString());
        assertEquals(
                "\"eb\" is read.",
                Phrase.sentence("\"{0}\" is read.", Phrase.typed("eb")).toString());
        assertEquals(
                "Three stay.", Phrase.sentence("{0} stay.", Phrase.number(3)).toString());
        assertEquals(
                "A minor third.",
                Phrase.sentence("{0}.", Phrase.one(Interval.parse("m3"))).toString());
        assertEquals("up a step", Phrase.of("up a step").toString());
    }

    @Test
    @DisplayName("each sentence of several keeps its own capital")
    void eachSentenceKeepsItsCapital() {
        Phrase both =
                Phrase.sentence("{0} stays.", note("C")).then(Phrase.sentence("{0} moves.", Phrase.of("the bass")));
        assertEquals("C stays. The bass moves.", both.toString());
        assertEquals(both, Phrase.NOTHING.then(both));
        assertEquals(both, both.then(Phrase.NOTHING));
    }

    @Test
    @DisplayName("a list has its commas and its and, or its or")
    void listsArePutTogether() {
        assertEquals("", Phrase.list(List.of()).toString());
        assertEquals("A", Phrase.list(List.of(note("A"))).toString());
        assertEquals("A and B", Phrase.list(List.of(note("A"), note("B"))).toString());
        assertEquals(
                "A, B and C",
                Phrase.list(List.of(note("A"), note("B"), note("C"))).toString());
        assertEquals(
                "A, B, C or D",
                Phrase.either(List.of(note("A"), note("B"), note("C"), note("D")))
                        .toString());
        assertEquals(
                "F A♭ C", Phrase.row(List.of(note("F"), note("Ab"), note("C"))).toString());
    }

    @Test
    @DisplayName("a count takes the template for one, for many, or for none")
    void countsTakeTheirTemplate() {
        assertEquals("one voice", voices(1).toString());
        assertEquals("four voices", voices(4).toString());
        assertEquals("no voices", voices(0).toString());
        Phrase.Forms forms = new Phrase.Forms("a fault", "{0} faults", "nothing to mend");
        assertEquals("nothing to mend", Phrase.counted(0, forms, 0).toString());
        assertEquals("a fault", Phrase.counted(1, forms, 1).toString());
        assertEquals("13 faults", Phrase.counted(13, forms, 13).toString());
    }

    private static Phrase voices(int count) {
        return Phrase.counted(count, "{0} voice", "{0} voices", Phrase.number(count));
    }

    @Test
    @DisplayName("an interval goes with its article where one is asked for")
    void intervalsHaveTheirArticle() {
        assertEquals(
                "minor third, a minor third, an augmented fourth",
                Phrase.of("{0}, {1}, {2}", interval("m3"), Phrase.one(interval("m3")), Phrase.one(interval("A4")))
                        .toString());
        assertEquals("lowered sixth", Phrase.inWords(Degree.parse("b6")).toString());
        assertEquals(
                "harmonic minor",
                Phrase.kind(monochord.theory.ScaleKind.HARMONIC_MINOR).toString());
    }

    private static Interval interval(String text) {
        return Interval.parse(text);
    }

    @Test
    @DisplayName("what was typed is quoted letter for letter, less what could steer a terminal")
    void typedTextIsQuoted() {
        assertEquals(
                "\"{0} \uFFFDA\" is nothing.",
                Phrase.sentence("\"{0}\" is nothing.", Phrase.typed("{0} \u001BA"))
                        .toString());
    }

    @Test
    @DisplayName("a refusal goes by the reader's names, and quotes letter for letter")
    void refusalsGoByTheReader() {
        Phrase noNote = Phrase.refusal(assertThrows(Unreadable.class, () -> NoteName.parse("Hb")));
        assertEquals(
                "\"Hb\" is not a note name: expected a letter from A to G at character 1, found 'H'. Example: Eb",
                noNote.toString());
        assertEquals(
                "\"Hb\" is not a note name: expected a letter from A to H at character 1, found 'H'. Example: Es",
                said(noNote, GERMAN));
        assertEquals(
                "\"Hb\" is not a note name: expected a syllable from Do to Si at character 1, found 'H'. Example: Mib",
                said(noNote, LATIN));
        Phrase noInterval = Phrase.refusal(assertThrows(Unreadable.class, () -> Interval.parse("m11")));
        assertEquals(
                "\"m11\" is not an interval: an eleventh is perfect, augmented or diminished. Example: m3",
                noInterval.toString());
    }

    @Test
    @DisplayName("a clause of a refusal has values for parts, and texts that are typed as they stand")
    void clausesHaveParts() {
        Clause clause =
                Clause.of("{0} has no {1}; {2}", note("Bb"), "--loop", Clause.of("{0} has", Key.parse("Bb minor")));
        assertEquals("Bb has no --loop; Bb minor has", clause.toString());
        assertEquals(
                "B\u266d has no --loop; B\u266d minor has",
                Phrase.clause(clause).toString());
        assertEquals("B has no --loop; B minor has", said(Phrase.clause(clause), GERMAN));
    }

    @Test
    @DisplayName("a brace that opens no place stays")
    void otherBracesStay() {
        assertEquals("{ {1} {x} {0 C", Phrase.of("{ {1} {x} {0 {0}", note("C")).toString());
    }

    @Test
    @DisplayName("parts carry a style")
    void partsCarryAStyle() {
        Phrase phrase =
                Phrase.of("root {0} here", Phrase.row(List.of(note("C"))).styled(Style.ROOT));
        assertEquals(
                List.of(new Span("root ", Style.QUIET), new Span("C", Style.ROOT), new Span(" here", Style.QUIET)),
                phrase.styled(Style.QUIET).in(Reader.ENGLISH).spans());
    }

    @Test
    @DisplayName("a text is no part: it is a template of its own, or typed")
    void aTextIsNoPart() {
        var refused = assertThrows(IllegalArgumentException.class, () -> Phrase.of("{0}", "the bass"));
        assertEquals(
                "a part of a phrase is music, a whole number or a phrase, not class java.lang.String",
                refused.getMessage());
    }

    @Test
    @DisplayName("equal phrases say the same of the same values")
    void equality() {
        assertEquals(Phrase.of("{0} stays", note("C")), Phrase.of("{0} stays", note("C")));
        assertNotEquals(Phrase.of("{0} stays", note("C")), Phrase.of("{0} stays", note("D")));
        assertNotEquals(Phrase.of("{0} stays", note("C")), Phrase.sentence("{0} stays", note("C")));
    }

    @Test
    @DisplayName("another language has its own templates, forms, lists and names, and English where it has none")
    void anotherLanguage() {
        Language french = new Language() {
            @Override
            public String template(String english) {
                return english.equals("{0} after {1}") ? "{1} avant {0}" : english;
            }

            @Override
            public ListPatterns list(Conjunction conjunction) {
                return new ListPatterns("{0} et {1}", "{0}, {1}", "{0} et {1}");
            }

            @Override
            public String scaleKind(monochord.theory.ScaleKind kind) {
                return kind == monochord.theory.ScaleKind.MAJOR ? "majeur" : kind.toString();
            }
        };
        Reader reader = new Reader(Signs.MUSIC.with(NoteNaming.LATIN), french);
        assertEquals("Sol avant Do", said(Phrase.of("{0} after {1}", note("C"), note("G")), reader));
        assertEquals("Do, Re et Mi", said(Phrase.list(List.of(note("C"), note("D"), note("E"))), reader));
        assertEquals("in Re majeur", said(Phrase.of("in {0}", Key.parse("D")), reader));
        assertEquals("majeur", said(Phrase.kind(monochord.theory.ScaleKind.MAJOR), reader));
    }
}
