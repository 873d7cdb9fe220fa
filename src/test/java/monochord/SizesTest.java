package monochord;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Files and methods of the program stay as short as one can read in one go. */
class SizesTest {
    /** Being taken apart. Nothing may be added. */
    private static final Set<String> STILL_TOO_LARGE = Set.of();

    private static final Set<String> STILL_TOO_LONG = Set.of();

    private static final List<Integer> fileLines = new ArrayList<>();
    private static final List<Method> methods = new ArrayList<>();

    /** @param lines from the brace that opens its body to the one that closes it */
    private record Method(String name, int lines, int parameters) {
        boolean isTooLarge() {
            return lines > 30 || parameters > 5;
        }
    }

    @BeforeAll
    static void measure() throws IOException {
        JavaSources sources = JavaSources.ofTheProgram();
        for (Path file : sources.files()) {
            if (!file.endsWith("package-info.java")) {
                fileLines.add(lines(file));
            }
        }
        sources.units().forEach(unit -> new Measure(unit, sources.positions()).scan(unit, null));
    }

    private static int lines(Path file) throws IOException {
        return Files.readAllLines(file).size();
    }

    /** Measures the methods of one file. What a record is made of is no list of parameters. */
    private static final class Measure extends TreePathScanner<Void, Void> {
        private final CompilationUnitTree unit;
        private final SourcePositions positions;

        Measure(CompilationUnitTree unit, SourcePositions positions) {
            this.unit = unit;
            this.positions = positions;
        }

        @Override
        public Void visitMethod(MethodTree method, Void nothing) {
            ClassTree owner = (ClassTree) getCurrentPath().getParentPath().getLeaf();
            boolean ofRecord = owner.getKind() == Tree.Kind.RECORD && method.getReturnType() == null;
            int lines = method.getBody() == null ? 0 : lines(method.getBody());
            int parameters = ofRecord ? 0 : method.getParameters().size();
            methods.add(new Method(owner.getSimpleName() + "." + method.getName(), lines, parameters));
            return super.visitMethod(method, nothing);
        }

        private int lines(Tree body) {
            return line(positions.getEndPosition(unit, body)) - line(positions.getStartPosition(unit, body)) + 1;
        }

        private int line(long position) {
            return (int) unit.getLineMap().getLineNumber(position);
        }
    }

    /** The smallest number that so many in a hundred do not go beyond. */
    private static int percentile(int percent, List<Integer> numbers) {
        List<Integer> sorted = numbers.stream().sorted().toList();
        return sorted.get((sorted.size() * percent + 99) / 100 - 1);
    }

    private static Set<String> names(Predicate<Method> which) {
        return methods.stream().filter(which).map(Method::name).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    @DisplayName("half of the files have at most 100 lines, nine in ten at most 250")
    void filesAreShort() {
        assertTrue(fileLines.size() > 500, "only " + fileLines.size() + " files seen");
        assertTrue(percentile(50, fileLines) <= 100, () -> "half have up to " + percentile(50, fileLines));
        assertTrue(percentile(90, fileLines) <= 250, () -> "nine in ten have up to " + percentile(90, fileLines));
    }

    @Test
    @DisplayName("no file of the program has more than 300 lines, none of the tests more than 350")
    void noFileIsLong() throws IOException {
        Set<String> tooLong = new TreeSet<>();
        try (Stream<Path> found = Files.walk(Path.of("src"))) {
            for (Path file :
                    found.filter(path -> path.toString().endsWith(".java")).toList()) {
                if (lines(file) > (file.startsWith(Path.of("src", "test")) ? 350 : 300)) {
                    tooLong.add(file.getFileName().toString());
                }
            }
        }
        assertEquals(STILL_TOO_LONG, tooLong);
    }

    @Test
    @DisplayName("nine in ten methods have at most 15 lines")
    void methodsAreShort() {
        List<Integer> lines =
                methods.stream().map(Method::lines).filter(count -> count > 0).toList();
        assertTrue(lines.size() > 3000, "only " + lines.size() + " methods seen");
        assertTrue(percentile(90, lines) <= 15, () -> "nine in ten have up to " + percentile(90, lines));
    }

    @Test
    @DisplayName("no method has more than 30 lines or 5 parameters")
    void noMethodIsLong() {
        assertEquals(STILL_TOO_LARGE, names(Method::isTooLarge));
    }
}
