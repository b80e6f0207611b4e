package reseat.stock.sql;

import java.io.File;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.UserPrincipal;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A PostgreSQL server of the tests' own: a data folder below the temporary folder, a port that was
 * free, loopback alone. It refuses to run as root, so it runs as the user postgres then.
 */
final class PostgresServer {

    private static final int LOOKS = 600;
    private static final boolean ROOT = "root".equals(System.getProperty("user.name"));

    private final Path bin;
    private final Path folder;
    private final int port;
    private Process server;

    private PostgresServer(Path bin, Path folder, int port) {
        this.bin = bin;
        this.folder = folder;
        this.port = port;
    }

    /** Returns where the programs of PostgreSQL are; empty if they are not installed. */
    static Optional<Path> programs() {
        List<Path> places = new ArrayList<>();
        try (Stream<Path> versions =
                Files.exists(Path.of("/usr/lib/postgresql"))
                        ? Files.list(Path.of("/usr/lib/postgresql"))
                        : Stream.empty()) {
            versions.sorted(Comparator.reverseOrder())
                    .map(each -> each.resolve("bin"))
                    .forEach(places::add);
        } catch (IOException e) {
            return Optional.empty();
        }
        for (String each : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator)) {
            places.add(Path.of(each));
        }
        return places.stream()
                .filter(place -> Files.isExecutable(place.resolve("initdb")))
                .filter(place -> Files.isExecutable(place.resolve("postgres")))
                .findFirst();
    }

    static PostgresServer start(Path bin) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("reseat-pg");
        if (ROOT) {
            UserPrincipal postgres =
                    folder.getFileSystem()
                            .getUserPrincipalLookupService()
                            .lookupPrincipalByName("postgres");
            Files.setOwner(folder, postgres);
        }
        int port;
        try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = free.getLocalPort();
        }
        PostgresServer made = new PostgresServer(bin, folder, port);
        Process initdb =
                made.run(
                        "initdb",
                        "-D",
                        folder.resolve("data").toString(),
                        "-U",
                        "reseat",
                        "--auth=trust",
                        "--encoding=UTF8",
                        "--locale=C");
        if (!initdb.waitFor(120, TimeUnit.SECONDS) || initdb.exitValue() != 0) {
            throw new IOException("initdb failed: " + made.log());
        }
        made.restart();
        return made;
    }

    int port() {
        return port;
    }

    String url() {
        return url("postgres");
    }

    String url(String database) {
        return "jdbc:postgresql://127.0.0.1:" + port + "/" + database;
    }

    Map<String, String> settings() {
        return Map.of("url", url(), "user", "reseat");
    }

    /** Makes a database, or empties the one that is there, and returns its address. */
    String database(String name) throws SQLException {
        execute(url(), "drop database if exists " + name, "create database " + name);
        return url(name);
    }

    void execute(String url, String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection(url, "reseat", "");
                Statement statement = connection.createStatement()) {
            for (String each : statements) {
                statement.execute(each);
            }
        }
    }

    /** Starts it, and waits until it answers. */
    void restart() throws IOException, InterruptedException {
        for (int look = 0; look < LOOKS; look++) {
            if (server == null || !server.isAlive()) {
                // what a killed server left may be in use still; it then ends at once
                server =
                        run(
                                "postgres",
                                "-D",
                                folder.resolve("data").toString(),
                                "-p",
                                String.valueOf(port),
                                "-c",
                                "listen_addresses=127.0.0.1",
                                "-c",
                                "unix_socket_directories=",
                                "-c",
                                "shared_buffers=16MB");
            }
            try (Connection answer = DriverManager.getConnection(url(), "reseat", "")) {
                if (answer.isValid(5)) {
                    return;
                }
            } catch (SQLException e) {
                Thread.sleep(50); // not yet
            }
        }
        throw new IOException("the server does not answer: " + log());
    }

    /** Kills the server and what it started, as when the power fails. */
    void kill() throws InterruptedException {
        List<ProcessHandle> all = new ArrayList<>(server.descendants().toList());
        server.destroyForcibly().waitFor();
        for (ProcessHandle each : all) {
            each.destroyForcibly();
        }
    }

    /** Stops it at once without letting clients finish; it has to recover when it starts. */
    void stopAtOnce() throws IOException, InterruptedException {
        run("pg_ctl", "stop", "-D", folder.resolve("data").toString(), "-m", "immediate")
                .waitFor(60, TimeUnit.SECONDS);
        server.waitFor(60, TimeUnit.SECONDS);
    }

    private Process run(String program, String... words) throws IOException {
        List<String> command = new ArrayList<>();
        if (ROOT) {
            command.addAll(
                    List.of("setpriv", "--reuid=postgres", "--regid=postgres", "--init-groups"));
        }
        command.add(bin.resolve(program).toString());
        command.addAll(List.of(words));
        return new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(folder.resolve("log").toFile()))
                .start();
    }

    private String log() throws IOException {
        List<String> lines = Files.readAllLines(folder.resolve("log"));
        return String.join("\n", lines.subList(Math.max(0, lines.size() - 20), lines.size()));
    }

    /** Stops it for good. */
    void end() throws IOException, InterruptedException {
        stopAtOnce();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path each : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(each);
            }
        }
    }
}
