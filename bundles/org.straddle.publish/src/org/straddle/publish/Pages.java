package org.straddle.publish;

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
 * Sets briefs and announcements with the templates beside this class. HTML templates end in {@code .ftlh}, which makes
 * them escape every value by themselves; templates for plain text say so in their first line. In both nothing that somebody
 * wrote can act ({@link InertText}). Any thread may use it.
 */
final class Pages {

    private static final Catalogue TEXTS = Catalogue.of(Pages.class);

    private static final Catalogue SHEETS = Catalogue.of(Pages.class, "sheets");

    private final Configuration templates;

    Pages() {
        templates = new Configuration(Configuration.VERSION_2_3_34);
        templates.setClassForTemplateLoading(Pages.class, "");
        templates.setObjectWrapper(new InertValues());
        templates.setDefaultEncoding(StandardCharsets.UTF_8.name());
        templates.setLocale(Locale.ROOT);
        templates.setNumberFormat("computer");
        templates.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        templates.setLogTemplateExceptions(false);
        templates.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    }

    String html(Brief brief) {
        return set("brief.html.ftlh", "brief", brief);
    }

    String text(Brief brief) {
        return set("brief.txt.ftl", "brief", brief);
    }

    String html(Announcement announcement) {
        return set("announcement.html.ftlh", "announcement", announcement);
    }

    String text(Announcement announcement) {
        return set("announcement.txt.ftl", "announcement", announcement);
    }

    String html(SourceList sources) {
        return set("sources.html.ftlh", "sources", sources);
    }

    String text(SourceList sources) {
        return set("sources.txt.ftl", "sources", sources);
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
    private static String text(List<?> given) throws TemplateModelException {
        Object[] values = new Object[given.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = DeepUnwrap.unwrap((TemplateModel) given.get(i));
        }
        Map<String, Object> named = new HashMap<>();
        for (int i = 1; i + 1 < values.length; i += 2) {
            named.put((String) values[i], values[i + 1]);
        }
        return SHEETS.text((String) values[0], named);
    }

    private String set(String template, String name, Object value) {
        try {
            StringWriter page = new StringWriter();
            templates.getTemplate(template).process(Map.of(name, value, "text", (TemplateMethodModelEx) Pages::text,
                    "language", Language.current().tag()), page);
            return page.toString();
        } catch (IOException | TemplateException e) {
            // The templates come with this bundle: a fault in one is ours.
            throw new IllegalStateException(TEXTS.text("pages.templateDoesNot", "template", template,
                    "reason", e.getMessage()), e);
        }
    }
}
