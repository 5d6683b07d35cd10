/** Sets values with the templates that lie beside a class, so that nothing that somebody wrote can act. */
package org.straddle.publish.template;
