package monochord;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What {@link Catalogue} reads out of the sources: templates as they must be, and ever less English beside them. */
class CatalogueTest {
    /** How many English texts outside of phrases each file still holds. None may grow. */
    private static final Path NOT_YET_PHRASES =
            Path.of("src", "test", "resources", "monochord", "english-not-yet-phrases.tsv");

    private static final String MOVES = "names of moves, typed as they stand, and patterns of numerals";

    /** What stays as it is, and why. */
    private static final Map<String, String> ENGLISH_FOR_GOOD = Map.ofEntries(
            Map.entry(
                    "monochord/shell/Main.java",
                    "said where a part of the program is damaged, by a class that may load no other"),
            Map.entry("monochord/record/Schema.java", "SQL"),
            Map.entry("monochord/record/Logbook.java", "SQL"),
            Map.entry("monochord/record/KnowledgeQuery.java", "SQL"),
            Map.entry("monochord/record/PupilsQuery.java", "SQL"),
            Map.entry("monochord/sound/Synthesis.java", "names that the synthesizer of the JDK has for its settings"),
            Map.entry("monochord/harmony/colour/BorrowedIdioms.java", MOVES),
            Map.entry("monochord/harmony/colour/DominantIdioms.java", MOVES),
            Map.entry("monochord/harmony/colour/LineIdioms.java", MOVES),
            Map.entry("monochord/harmony/colour/AddedToneIdioms.java", MOVES),
            Map.entry("monochord/harmony/colour/UndeclaredChanges.java", MOVES),
            Map.entry("monochord/harmony/colour/IdiomNames.java", MOVES),
            Map.entry("monochord/harmony/colour/IdiomNeeds.java", MOVES));

    /** What is counted, may not grow either, and is said to nobody, and what it is instead. */
    private static final Map<String, String> NOT_SAID = Map.ofEntries(
            Map.entry("monochord/course/FirstQuestions.java", "answers that are read"),
            Map.entry("monochord/shell/sentence/Everyday.java", "answers that are read"),
            Map.entry("monochord/shell/verb/course/NotesVerb.java", "names that are read"),
            Map.entry("monochord/harmony/Instrument.java", "names that are read"),
            Map.entry("monochord/theory/Key.java", "names that are read"),
            Map.entry("monochord/theory/ScaleKind.java", "names that are read; a language says them by its own"),
            Map.entry("monochord/theory/note/Degree.java", "names of degrees; a language says them by its own"),
            Map.entry("monochord/sound/Patch.java", "a name of General MIDI, as an example to type"),
            Map.entry("monochord/lesson/Fill.java", "what may stand in a fill, as an example to write"),
            Map.entry("monochord/shell/Training.java", "lines that are typed while the program is built"),
            Map.entry("monochord/text/naming/FirstWord.java", "finds names in the prose of lessons"),
            Map.entry("monochord/text/naming/InProse.java", "finds names in the prose of lessons"),
            Map.entry("monochord/view/notebook/CellTrouble.java", "finds a refusal in what a cell says"),
            Map.entry("monochord/harmony/Glossary.java", "words that are read"),
            Map.entry("monochord/shell/LineReading.java", "answers that are read"),
            Map.entry("monochord/cell/OutsideWatch.java", "a script for the system's shell"),
            Map.entry("monochord/shell/manual/ShellCompletion.java", "scripts for shells"),
            Map.entry("monochord/shell/verb/keeping/Setting.java", "words that are typed"),
            Map.entry("monochord/shell/verb/HelpVerb.java", "words that are typed"),
            Map.entry("monochord/record/KeptSet.java", "the first line of a file"),
            Map.entry("monochord/record/Agenda.java", "the first line of a file"),
            Map.entry("monochord/record/Register.java", "the name of a thread"),
            Map.entry("monochord/sound/keyboard/Connection.java", "names of threads"),
            Map.entry("monochord/sound/keyboard/MidiKeyboard.java", "the name of a thread"),
            Map.entry("monochord/view/web/WebExchange.java", "classes of a style sheet"),
            Map.entry("monochord/view/web/WebPage.java", "markup"));

    /** What is still said in texts put together from pieces. */
    private static final Pattern STILL_ENGLISH = Pattern.compile("monochord/cell/sandbox/.*");

    /** Words in which answers and subjects are read; verdicts, hints and questions are phrases. */
    private static final Pattern READ = Pattern.compile("monochord/practice/(reading|answer|skill)/.*");

    private static final Catalogue CATALOGUE = Catalogue.ofTheSources();

    private static Map<String, Integer> counted() {
        Map<String, Integer> counted = new TreeMap<>(CATALOGUE.english());
        counted.keySet().removeAll(ENGLISH_FOR_GOOD.keySet());
        return counted;
    }

    @Test
    @DisplayName("every template is a literal, so that the sources are the catalogue")
    void everyTemplateIsALiteral() {
        assertTrue(
                CATALOGUE.templates().size() > 2000,
                () -> "only " + CATALOGUE.templates().size() + " templates seen");
        assertEquals(List.of(), CATALOGUE.faults());
    }

    @Test
    @DisplayName("every template has a place for each part, and a part for each place")
    void partsAndPlacesAgree() {
        List<String> wrong = new ArrayList<>();
        for (Catalogue.Template template : CATALOGUE.templates()) {
            Set<Integer> places = template.places();
            int highest = places.stream().mapToInt(Integer::intValue).max().orElse(-1);
            boolean gaps = places.size() != highest + 1;
            if (template.parts() >= 0 && (gaps && !template.english().isEmpty() || highest >= template.parts())) {
                wrong.add(template.where() + ": " + template.parts() + " parts for " + template.english());
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    @DisplayName("English that is no phrase yet grows less, in every file")
    void whatIsNoPhraseYetGrowsLess() throws IOException {
        Map<String, Integer> before = new TreeMap<>();
        for (String line : Files.readAllLines(NOT_YET_PHRASES)) {
            String[] columns = line.split("\t");
            before.put(columns[0], Integer.parseInt(columns[1]));
        }
        Map<String, Integer> now = counted();
        Map<String, Integer> grown = new TreeMap<>(now);
        grown.entrySet().removeIf(file -> file.getValue() <= before.getOrDefault(file.getKey(), 0));
        assertEquals(Map.of(), grown, "more English texts outside of phrases than before");
        if (Boolean.getBoolean("catalogue.accept")) {
            Files.writeString(NOT_YET_PHRASES, table(now));
        } else {
            assertEquals(before, now, "fewer than before: say so with -Dcatalogue.accept=true");
        }
    }

    @Test
    @DisplayName("what is no phrase yet is said by Java; all else that is counted is said to nobody")
    void onlyJavaIsStillEnglish() {
        Set<String> others = new TreeSet<>(counted().keySet());
        others.removeIf(file ->
                STILL_ENGLISH.matcher(file).matches() || READ.matcher(file).matches());
        assertEquals(new TreeSet<>(NOT_SAID.keySet()), others);
    }

    private static String table(Map<String, Integer> english) {
        return english.entrySet().stream()
                .map(file -> file.getKey() + "\t" + file.getValue() + "\n")
                .collect(Collectors.joining());
    }
}
