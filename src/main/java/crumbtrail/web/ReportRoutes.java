package crumbtrail.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.picture.LoafPictures;
import crumbtrail.report.Replied;
import crumbtrail.report.Reply;
import crumbtrail.report.Report;
import crumbtrail.report.TextReport;
import crumbtrail.sheet.Problem;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;
import crumbtrail.sheet.SheetWriter;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The report on a bake: from the form, from a link, after an answer, and as files. */
final class ReportRoutes {
  private static final String FORM = "application/x-www-form-urlencoded";
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int PASSED_MOST = 200;

  private final Tracer tracer;
  private final LoafPictures pictures;
  private final Guards guards;
  private final FormRoutes forms;

  ReportRoutes(Tracer tracer, LoafPictures pictures, Guards guards, FormRoutes forms) {
    this.tracer = tracer;
    this.pictures = pictures;
    this.guards = guards;
    this.forms = forms;
  }

  void register(RoutesConfig routes) {
    routes.post("/trace", ctx -> form(ctx, false));
    routes.post("/precheck", ctx -> form(ctx, true));
    routes.get("/trace", ctx -> link(ctx, false));
    routes.get("/precheck", ctx -> link(ctx, true));
    routes.post("/answer", this::answer);
    routes.post("/sheet.json", this::sheetFile);
    routes.post("/report.json", this::dataFile);
    routes.post("/report.txt", this::textFile);
  }

  // What an address can carry is shown under that address: it survives a reload, the way back from
  // the next bake, and a change of language.
  private void form(Context ctx, boolean ahead) {
    BakeForm form = forms.read(ctx);
    Optional<String> address = address(form, ahead);
    if (address.isPresent()) {
      // A choice of units or language that came with the form goes on with it.
      String choice = ctx.queryString() == null ? "" : "&" + ctx.queryString();
      ctx.redirect(address.get() + choice, HttpStatus.SEE_OTHER);
      return;
    }
    Traced<Report> traced = worked(form.sheetJson(), ahead);
    if (traced instanceof Traced.Made<Report> made) {
      String sheet = (ahead ? form.withoutSigns() : form).sheetJson();
      show(ctx, made.report(), Held.of(sheet, ahead, Units.of(ctx), Texts.of(ctx)));
    } else if (traced instanceof Traced.Refused<Report> refused) {
      forms.sendBack(ctx, form, refused.problems());
    }
  }

  private static Optional<String> address(BakeForm form, boolean ahead) {
    String sheet = (ahead ? form.withoutSigns() : form).sheetJson();
    return SheetReader.read(sheet).sheet().isPresent()
        ? SheetLink.address(sheet, ahead)
        : Optional.empty();
  }

  // Whoever comes by address without a sheet has one still to fill in.
  private void link(Context ctx, boolean ahead) {
    String letters = ctx.queryParam("sheet");
    if (letters == null || letters.isBlank()) {
      ctx.redirect("/");
      return;
    }
    String sheet = SheetLink.unpack(letters);
    show(ctx, made(worked(sheet, ahead)), Held.of(sheet, ahead, Units.of(ctx), Texts.of(ctx)));
  }

  private void answer(Context ctx) {
    Map<String, String> fields = fields(ctx);
    Reply reply = new Reply(fields.getOrDefault("about", ""), fields.getOrDefault("said", ""));
    Set<String> passed =
        Stream.of(fields.getOrDefault("passed", "").split(","))
            .filter(key -> !key.isBlank())
            .limit(PASSED_MOST)
            .collect(Collectors.toUnmodifiableSet());
    Replied replied = made(tracer.reply(fields.getOrDefault("sheet", ""), passed, reply));
    if (!replied.taken().problems().isEmpty()) {
      ctx.status(400);
    }
    String sheet = SheetWriter.node(replied.taken().sheet()).toString();
    show(
        ctx,
        replied.report(),
        Held.of(sheet, reply, replied.taken(), Units.of(ctx), Texts.of(ctx)));
  }

  // The sheet goes out as it came in, if it is one.
  private void sheetFile(Context ctx) throws JsonProcessingException {
    String sheet = text(fields(ctx));
    Reading reading = SheetReader.read(sheet);
    if (reading.sheet().isEmpty()) {
      throw refused(reading.problems());
    }
    file(ctx, "application/json", "bake-sheet.json", JSON.readTree(sheet).toPrettyString());
  }

  private void dataFile(Context ctx) {
    file(
        ctx,
        "application/json",
        "report.json",
        JSON.<JsonNode>valueToTree(reported(ctx)).toPrettyString());
  }

  private void textFile(Context ctx) {
    file(ctx, "text/plain; charset=utf-8", "report.txt", TextReport.of(reported(ctx)));
  }

  private Report reported(Context ctx) {
    Map<String, String> fields = fields(ctx);
    return made(worked(text(fields), fields.getOrDefault("ahead", "").equals("yes")));
  }

  private static void file(Context ctx, String type, String name, String text) {
    ctx.contentType(type)
        .header("Content-Disposition", "attachment; filename=\"" + name + "\"")
        .result(text.endsWith("\n") ? text : text + "\n");
  }

  private static String text(Map<String, String> fields) {
    return fields.getOrDefault("sheet", "");
  }

  private Map<String, String> fields(Context ctx) {
    guards.checkOrigin(ctx);
    guards.checkType(ctx, FORM);
    return FormBody.read(ctx.bodyAsBytes())
        .orElseThrow(() -> new Refusal(400, "The form arrived damaged."));
  }

  private Traced<Report> worked(String sheet, boolean ahead) {
    return ahead ? tracer.precheck(sheet) : tracer.trace(sheet);
  }

  private static <T> T made(Traced<T> traced) {
    if (traced instanceof Traced.Made<T> made) {
      return made.report();
    }
    throw refused(((Traced.Refused<T>) traced).problems());
  }

  private static Refusal refused(List<Problem> problems) {
    return new Refusal(400, "The bake sheet cannot be used.", problems);
  }

  private void show(Context ctx, Report report, Held held) {
    Map<String, Object> model = new LinkedHashMap<>();
    model.put("report", ReportViews.of(report, pictures, held));
    model.put("teaching", Teaching.of(ctx));
    if (!held.ahead()) {
      KeepRoutes.form(ctx, held.sheet(), report).ifPresent(keep -> model.put("keep", keep));
    }
    Rendering.page(ctx, "report.jte", model);
  }
}
