// The two parts that a .vsix has beside the extension itself. What stands in them, and in which words, is as the
// editor's own packaging tool writes it: test/reference/vsix/ holds what that made of a small extension.

const CONTENT_TYPES = {
  ".css": "text/css",
  ".js": "application/javascript",
  ".json": "application/json",
  ".md": "text/markdown",
  ".png": "image/png",
  ".practice": "text/plain",
  ".svg": "image/svg+xml",
  ".txt": "text/plain",
  ".vsixmanifest": "text/xml",
};

/** The parts of a package that a gallery shows, by what it calls them. */
const SHOWN = {
  "Microsoft.VisualStudio.Services.Content.Details": "readme.md",
  "Microsoft.VisualStudio.Services.Content.Changelog": "changelog.md",
  "Microsoft.VisualStudio.Services.Content.License": "LICENSE.txt",
};

/** `extension.vsixmanifest`: what package.json says, for galleries. */
export function vsixManifest(manifest) {
  const { name, displayName, description, version, publisher, icon, categories } = manifest;
  const properties = Object.entries(propertiesOf(manifest));
  const assets = Object.entries({
    "Microsoft.VisualStudio.Code.Manifest": "package.json",
    ...SHOWN,
    "Microsoft.VisualStudio.Services.Icons.Default": icon,
  });
  return `<?xml version="1.0" encoding="utf-8"?>
<PackageManifest Version="2.0.0" xmlns="http://schemas.microsoft.com/developer/vsx-schema/2011" xmlns:d="http://schemas.microsoft.com/developer/vsx-schema-design/2011">
  <Metadata>
    <Identity${attributes({ Language: "en-US", Id: name, Version: version, Publisher: publisher })} />
    <DisplayName>${escaped(displayName)}</DisplayName>
    <Description xml:space="preserve">${escaped(description)}</Description>
    <Tags>${escaped(tagsOf(manifest).join(","))}</Tags>
    <Categories>${escaped(categories.join(","))}</Categories>
    <GalleryFlags>${manifest.preview ? "Public Preview" : "Public"}</GalleryFlags>
    <Properties>
${properties.map(([id, value]) => `      <Property${attributes({ Id: id, Value: value })} />`).join("\n")}
    </Properties>
    <License>extension/LICENSE.txt</License>
    <Icon>extension/${escaped(icon)}</Icon>
  </Metadata>
  <Installation>
    <InstallationTarget Id="Microsoft.VisualStudio.Code" />
  </Installation>
  <Dependencies />
  <Assets>
${assets.map(([type, path]) => `    <Asset${attributes({ Type: type, Path: `extension/${path}`, Addressable: "true" })} />`).join("\n")}
  </Assets>
</PackageManifest>
`;
}

/**
 * `[Content_Types].xml`: the media type of each file by its ending.
 *
 * @param paths of all files in the package. Throws for an ending that is not known.
 */
export function contentTypes(paths) {
  const endings = [...new Set(paths.map((path) => /\.[^./]+$/.exec(path)?.[0] ?? path))].sort();
  const types = endings.map((ending) => {
    const type = CONTENT_TYPES[ending];
    if (!type) throw new Error(`A package would hold "${ending}", whose media type vsix-manifest.mjs does not know.`);
    return `<Default${attributes({ Extension: ending, ContentType: type })}/>`;
  });
  return `<?xml version="1.0" encoding="utf-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">${types.join("")}</Types>
`;
}

function propertiesOf({ engines, extensionKind, galleryBanner, pricing, qna }) {
  return {
    "Microsoft.VisualStudio.Code.Engine": engines.vscode,
    "Microsoft.VisualStudio.Code.ExtensionDependencies": "",
    "Microsoft.VisualStudio.Code.ExtensionPack": "",
    // An extension with a bundle for browsers runs there, too.
    "Microsoft.VisualStudio.Code.ExtensionKind": [...extensionKind, "web"].join(","),
    "Microsoft.VisualStudio.Code.LocalizedLanguages": "",
    "Microsoft.VisualStudio.Code.EnabledApiProposals": "",
    "Microsoft.VisualStudio.Code.ExecutesCode": "true",
    "Microsoft.VisualStudio.Services.Branding.Color": galleryBanner.color,
    "Microsoft.VisualStudio.Services.Branding.Theme": galleryBanner.theme,
    "Microsoft.VisualStudio.Services.GitHubFlavoredMarkdown": "true",
    "Microsoft.VisualStudio.Services.Content.Pricing": pricing,
    "Microsoft.VisualStudio.Services.EnableMarketplaceQnA": String(qna),
  };
}

/** What a gallery finds an extension by: its keywords, and by the last two kinds an editor what opens a file. */
function tagsOf({ keywords, contributes }) {
  const languages = contributes.languages.flatMap(({ id, aliases, extensions }) => [
    id,
    ...aliases.map((alias) => alias.replaceAll(" ", "")),
    ...extensions.map((ending) => `__ext_${ending.slice(1)}`),
  ]);
  return [...new Set([...keywords, ...languages, "__web_extension"])];
}

function attributes(values) {
  return Object.entries(values)
    .map(([name, value]) => ` ${name}="${escaped(value)}"`)
    .join("");
}

function escaped(text) {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}
