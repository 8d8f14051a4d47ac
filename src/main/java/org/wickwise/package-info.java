/** Wickwise turns chromatography strips into an explained column plan; the rooms below build on one another. */
package org.wickwise;
