package crumbtrail.rules;

import crumbtrail.knowledge.Fault;
import crumbtrail.knowledge.FaultyKnowledge;
import java.util.List;
import java.util.Map;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;

/** Compiles checked rules into the bytes of a module that loads quickly. */
final class RuleCompiler {
  static final String BASE = "bread";
  static final String PACKAGE = "crumbtrail.rules.base";

  // One line, so that line numbers in messages differ by exactly one from the file's.
  private static final String HEADER =
      "package crumbtrail.rules.base; import crumbtrail.rules.*;"
          + " import crumbtrail.workup.Reading; global crumbtrail.rules.Testimony testimony;\n";

  private RuleCompiler() {}

  /** The coordinates under which a compiled rule base of this content is known to the engine. */
  static ReleaseId release(String version) {
    return KieServices.get().newReleaseId("crumbtrail", "rules", version);
  }

  /**
   * Compiles a folder.
   *
   * @param version names this content; a second base of the same version replaces the first
   * @return the module as bytes
   * @throws FaultyKnowledge if the engine refuses a rule that the checks let through
   */
  static byte[] compile(RuleFolder folder, String version) throws FaultyKnowledge {
    KieServices services = KieServices.get();
    KieFileSystem files = services.newKieFileSystem();
    var module = services.newKieModuleModel();
    module.newKieBaseModel(BASE).setDefault(true).addPackage(PACKAGE);
    files.writeKModuleXML(module.toXML());
    files.generateAndWritePomXML(release(version));
    files.write("src/main/resources/crumbtrail/rules/base/bread.dsl", folder.sentences());
    for (Map.Entry<String, String> file : folder.files().entrySet()) {
      String name = file.getKey().substring(file.getKey().lastIndexOf('/') + 1);
      files.write("src/main/resources/crumbtrail/rules/base/" + name, HEADER + file.getValue());
    }
    KieBuilder builder = services.newKieBuilder(files);
    builder.buildAll(ExecutableModelProject.class);
    List<Fault> faults =
        builder.getResults().getMessages(Message.Level.ERROR).stream()
            .map(RuleCompiler::fault)
            .toList();
    if (!faults.isEmpty()) {
      throw new FaultyKnowledge(faults);
    }
    return ((InternalKieModule) builder.getKieModule()).getBytes();
  }

  private static Fault fault(Message message) {
    String path = String.valueOf(message.getPath());
    return new Fault(
        "stages/" + path.substring(path.lastIndexOf('/') + 1),
        Math.max(0, message.getLine() - 1),
        message.getText(),
        "Compare with a rule near it that compiles");
  }
}
