package org.wickwise.rulebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.Model;
import org.drools.model.codegen.ExecutableModelProject;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;

/**
 * Compiles rules once for each content and keeps the result, because compiling costs seconds and loading does not. A
 * kept result that is damaged, or was made by another build of the program, is made anew.
 */
final class CompiledRules {

    private static final String LIST_OF_MODELS = "drools-model";

    private final Path keep;

    /** @param keep the folder for compiled rules; made when it is not there */
    CompiledRules(Path keep) {
        this.keep = keep;
    }

    KieBase of(String translation) {
        Path kept = keep.resolve("rules-" + fingerprint(translation) + ".jar");
        return loaded(kept).orElseGet(() -> {
            byte[] compiled = compile(translation);
            return loaded(write(compiled, kept))
                    .orElseThrow(() -> new IllegalStateException("rules compiled a moment ago cannot be loaded"));
        });
    }

    /** The rules of a kept result; empty when it is missing or damaged. */
    private static Optional<KieBase> loaded(Path kept) {
        if (!Files.isRegularFile(kept)) {
            return Optional.empty();
        }
        try {
            // Lives as long as the rules do: their classes are loaded through it on demand.
            @SuppressWarnings("resource")
            URLClassLoader loader =
                    new URLClassLoader(new URL[] {kept.toUri().toURL()}, CompiledRules.class.getClassLoader());
            List<Model> models = new ArrayList<>();
            for (String name : modelNames(kept)) {
                models.add(
                        (Model) loader.loadClass(name).getDeclaredConstructor().newInstance());
            }
            return models.isEmpty() ? Optional.empty() : Optional.of(KieBaseBuilder.createKieBaseFromModel(models));
        } catch (IOException | ReflectiveOperationException | LinkageError e) {
            return Optional.empty();
        }
    }

    private static List<String> modelNames(Path kept) throws IOException {
        try (JarFile jar = new JarFile(kept.toFile())) {
            List<String> names = new ArrayList<>();
            for (var entry : jar.stream()
                    .filter(found -> found.getName().endsWith(LIST_OF_MODELS))
                    .toList()) {
                new String(jar.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8)
                        .lines()
                        .filter(line -> !line.isBlank() && !line.contains(":"))
                        .forEach(names::add);
            }
            return names;
        }
    }

    /** Keeps the result where the next start finds it, or in a passing file where that folder cannot be written. */
    private Path write(byte[] compiled, Path kept) {
        try {
            Files.createDirectories(keep);
            Path passing = Files.createTempFile(keep, "rules", ".part");
            Files.write(passing, compiled);
            return Files.move(passing, kept, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            try {
                Path passing = Files.createTempFile("wickwise-rules", ".jar");
                passing.toFile().deleteOnExit();
                return Files.write(passing, compiled);
            } catch (IOException neither) {
                throw new UncheckedIOException(neither);
            }
        }
    }

    private static byte[] compile(String translation) {
        KieServices services = KieServices.Factory.get();
        KieFileSystem files = services.newKieFileSystem();
        files.generateAndWritePomXML(
                services.newReleaseId("org.wickwise", "rules", Integer.toHexString(translation.hashCode())));
        files.write("src/main/resources/org/wickwise/rules/rules.drl", translation);
        KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
        List<Message> errors = builder.getResults().getMessages(Message.Level.ERROR);
        if (!errors.isEmpty()) {
            throw new IllegalStateException("a sentence of the vocabulary has no sound meaning: " + errors);
        }
        return ((InternalKieModule) builder.getKieModule()).getBytes();
    }

    private static String fingerprint(String translation) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(translation.getBytes(StandardCharsets.UTF_8));
            digest.update(build().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest.digest(), 0, 16);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Tells one build of the program from another: compiled rules are bound to its classes. */
    private static String build() {
        try {
            Path program = Path.of(CompiledRules.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            try (Stream<Path> files = Files.walk(program)) {
                return files.filter(Files::isRegularFile)
                        .map(file -> file.toFile().lastModified() + " "
                                + file.toFile().length())
                        .sorted()
                        .toList()
                        .toString();
            }
        } catch (IOException | URISyntaxException e) {
            return "unknown";
        }
    }
}
