package monochord;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** The sources of the program, as the compiler parses them; read once for all tests. */
record JavaSources(List<Path> files, List<CompilationUnitTree> units, SourcePositions positions) {
    private static final Path FOLDER = Path.of("src", "main", "java");
    private static final JavaSources PROGRAM = read();

    static JavaSources ofTheProgram() {
        return PROGRAM;
    }

    private static JavaSources read() {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null);
                Stream<Path> found = Files.walk(FOLDER)) {
            List<Path> files = found.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
            var task = (JavacTask)
                    compiler.getTask(null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(files));
            List<CompilationUnitTree> units = new ArrayList<>();
            task.parse().forEach(units::add);
            return new JavaSources(files, units, Trees.instance(task).getSourcePositions());
        } catch (IOException e) {
            throw new AssertionError("cannot read the sources", e);
        }
    }

    /** The file of a unit below the sources, such as {@code monochord/theory/Chord.java}. */
    String file(CompilationUnitTree unit) {
        return FOLDER.toAbsolutePath()
                .relativize(Path.of(unit.getSourceFile().toUri()))
                .toString()
                .replace('\\', '/');
    }
}
