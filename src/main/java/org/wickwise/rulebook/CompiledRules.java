package org.wickwise.rulebook;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.CRC32;
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
 * Compiles rules once for each content, because compiling costs seconds and loading does not. Rules that were compiled
 * when the program was packaged lie on its class path, others in a folder. A kept result that is damaged, or was made by
 * another build of the program, is made anew.
 */
final class CompiledRules {

    private static final String GROUP = "org.wickwise";

    private final KeptRules kept;
    private final ShippedRules shipped;

    /** @param keep the folder for compiled rules; made when it is not there */
    CompiledRules(Path keep, ShippedRules shipped) {
        this.kept = new KeptRules(keep);
        this.shipped = shipped;
    }

    KieBase of(String translation) {
        String fingerprint = fingerprint(translation);
        return shipped.of(fingerprint)
                .or(() -> loaded(CompiledRules.class.getClassLoader(), fingerprint))
                .or(() -> kept.find(fingerprint).flatMap(jar -> unpacked(jar, fingerprint)))
                .orElseGet(() -> {
                    byte[] jar = compile(translation, fingerprint);
                    kept.keep(fingerprint, jar);
                    return unpacked(jar, fingerprint)
                            .orElseThrow(
                                    () -> new IllegalStateException("rules compiled a moment ago cannot be loaded"));
                });
    }

    /** The content of a jar that, on the class path of this build of the program, saves compiling these rules. */
    static byte[] jarOf(String translation) {
        String fingerprint = fingerprint(translation);
        return ShippedRules.indexed(compile(translation, fingerprint), fingerprint);
    }

    private static Optional<KieBase> unpacked(byte[] jar, String fingerprint) {
        try {
            return loaded(RuleClasses.in(jar), fingerprint);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The rules that a class loader holds under a fingerprint; empty when there are none or they do not fit. */
    static Optional<KieBase> loaded(ClassLoader loader, String fingerprint) {
        try {
            List<Model> models = new ArrayList<>();
            for (String name : modelNames(loader, fingerprint)) {
                models.add(
                        (Model) loader.loadClass(name).getDeclaredConstructor().newInstance());
            }
            return models.isEmpty() ? Optional.empty() : Optional.of(KieBaseBuilder.createKieBaseFromModel(models));
        } catch (IOException | ReflectiveOperationException | LinkageError e) {
            return Optional.empty();
        }
    }

    private static List<String> modelNames(ClassLoader loader, String fingerprint) throws IOException {
        try (InputStream list =
                loader.getResourceAsStream("META-INF/kie/" + GROUP + "/" + distinct(fingerprint) + "/drools-model")) {
            return list == null
                    ? List.of()
                    : new String(list.readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .filter(line -> !line.isBlank() && !line.contains(":"))
                            .toList();
        }
    }

    private static byte[] compile(String translation, String fingerprint) {
        KieServices services = KieServices.Factory.get();
        KieFileSystem files = services.newKieFileSystem();
        files.generateAndWritePomXML(services.newReleaseId(GROUP, distinct(fingerprint), "1"));
        files.write(
                "src/main/resources/org/wickwise/rules/" + distinct(fingerprint) + "/rules.drl",
                "package org.wickwise.rules." + distinct(fingerprint) + ";\n" + translation);
        KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
        List<Message> errors = builder.getResults().getMessages(Message.Level.ERROR);
        if (!errors.isEmpty()) {
            throw new IllegalStateException("a sentence of the vocabulary has no sound meaning: " + errors);
        }
        return ((InternalKieModule) builder.getKieModule()).getBytes();
    }

    /** A name of which classes of rules of another content have none: both may be on the class path at once. */
    private static String distinct(String fingerprint) {
        return "r" + fingerprint;
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

    /**
     * Tells one build of the program from another: compiled rules are bound to its classes. The checksum of a jar does
     * not change when it is copied elsewhere; the classes of a folder are told apart by their time, which is cheaper.
     */
    private static String build() {
        try {
            Path program = Path.of(CompiledRules.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            if (Files.isRegularFile(program)) {
                byte[] jar = Files.readAllBytes(program);
                CRC32 checksum = new CRC32();
                checksum.update(jar);
                return jar.length + " " + checksum.getValue();
            }
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
