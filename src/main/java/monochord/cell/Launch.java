package monochord.cell;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import monochord.cell.protocol.WorkingFolder;
import monochord.cell.sandbox.SandboxMain;

/**
 * How the JVM of a cell is started: with this program's own classes and the JDK it runs on, little memory, a working folder
 * of its own, hardly any environment, and no terminal.
 */
record Launch(WorkingFolder folder, int port) {
    private static final List<String> FLAGS = List.of(
            "-Xmx256m",
            "-XX:MaxMetaspaceSize=128m",
            "-XX:MaxDirectMemorySize=32m",
            "-XX:+ExitOnOutOfMemoryError",
            "-XX:-CreateCoredumpOnCrash",
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-XX:-UsePerfData",
            "-Xshare:auto",
            "-Xlog:disable",
            "-Dfile.encoding=UTF-8",
            "-Djava.awt.headless=true",
            "-Djdk.console=java.base",
            "-Djdk.lang.Process.launchMechanism=none");

    /** Variables that a JVM needs on one system or another; all others are the learner's own business. */
    private static final Set<String> ENVIRONMENT = Set.of("LANG", "LC_ALL", "LC_CTYPE", "SystemRoot", "TEMP", "TMP");

    /** Gives a process a session of its own, and so no terminal and no keys. Some systems have no such program. */
    private static final List<Path> SESSION = List.of(Path.of("/usr/bin/setsid"), Path.of("/bin/setsid"));

    /** Starts it; what it writes to its streams is dropped, and its standard input is open for the secret. */
    Process start() throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command())
                .directory(folder.path().toFile())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().keySet().removeIf(name -> !ENVIRONMENT.contains(name));
        return builder.start();
    }

    private List<String> command() {
        List<String> command = new ArrayList<>();
        SESSION.stream()
                .filter(Files::isExecutable)
                .findFirst()
                .map(Path::toString)
                .ifPresent(command::add);
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(FLAGS);
        command.add("-Duser.home=" + folder.path());
        command.add("-Djava.io.tmpdir=" + folder.path());
        command.addAll(List.of("-cp", classPath(), SandboxMain.class.getName(), Integer.toString(port)));
        return command;
    }

    /** As it is here, in full, for the JVM starts in another folder. */
    private static String classPath() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(entry -> Path.of(entry).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }
}
