package org.straddle.publish.template;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.straddle.model.InertText;
import org.straddle.words.Catalogue;
import org.straddle.words.Language;

import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.utility.DeepUnwrap;

/**
 * The templates beside a class. HTML templates end in {@code .ftlh}, which makes them escape every value by themselves;
 * templates for plain text say so in their first line. In both nothing that somebody wrote can act ({@link InertText}). Any
 * thread may use it.
 */
public final class Templates {

    private static final Catalogue TEXTS = Catalogue.of(Templates.class);

    private final Configuration templates;
    private final Catalogue sheets;

    private Templates(Class<?> beside, Catalogue texts) {
        sheets = texts;
        templates = new Configuration(Configuration.VERSION_2_3_34);
        templates.setClassForTemplateLoading(beside, "");
        templates.setObjectWrapper(new InertValues());
        templates.setDefaultEncoding(StandardCharsets.UTF_8.name());
        templates.setLocale(Locale.ROOT);
        templates.setNumberFormat("computer");
        templates.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        templates.setLogTemplateExceptions(false);
        templates.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    }

    /** @param texts what templates say by {@code text("key", …)} */
    public static Templates beside(Class<?> type, Catalogue texts) {
        return new Templates(type, texts);
    }

    /** Values as templates see them: text that somebody wrote ends no line, or it could pass for a line of ours. */
    private static final class InertValues extends DefaultObjectWrapper {

        InertValues() {
            super(Configuration.VERSION_2_3_34);
        }

        @Override
        public TemplateModel wrap(Object value) throws TemplateModelException {
            return super.wrap(value instanceof String text ? InertText.line(text) : value);
        }
    }

    /** {@code text("key", "name", value, …)} of a template: a text of the catalogue. */
    private String text(List<?> given) throws TemplateModelException {
        Object[] values = new Object[given.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = DeepUnwrap.unwrap((TemplateModel) given.get(i));
        }
        Map<String, Object> named = new HashMap<>();
        for (int i = 1; i + 1 < values.length; i += 2) {
            named.put((String) values[i], values[i + 1]);
        }
        return sheets.text((String) values[0], named);
    }

    /** The page that a template makes of values. */
    public String set(String template, Map<String, ?> values) {
        try {
            StringWriter page = new StringWriter();
            Map<String, Object> given = new HashMap<>(values);
            given.put("text", (TemplateMethodModelEx) this::text);
            given.put("language", Language.current().tag());
            templates.getTemplate(template).process(given, page);
            return page.toString();
        } catch (IOException | TemplateException e) {
            // The templates come with this bundle: a fault in one is ours.
            throw new IllegalStateException(TEXTS.text("templates.templateDoesNot", "template", template,
                    "reason", e.getMessage()), e);
        }
    }
}
