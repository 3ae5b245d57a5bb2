# Loads the build for this runtime. On PowerShell 7 the libraries live in a load context of their own, so that another module's copy of one cannot clash;
# the assembly with the cmdlets is an ordinary binary module, which is what keeps Import-Module -Force, help and the formats working as usual.
Set-StrictMode -Version 3.0

$build = if ($PSEdition -eq 'Core' -and [Environment]::Version.Major -ge 8) { 'net8.0' } else { 'netstandard2.0' }
$assemblyFolder = [IO.Path]::Combine($PSScriptRoot, $build)
$loaderPath = [IO.Path]::Combine($PSScriptRoot, 'loader', $PSEdition, 'LayerTools.Loader.dll')

$loader = 'LayerTools.Loader.ModuleLoader' -as [type]
if (-not $loader) {
    $loader = [Reflection.Assembly]::LoadFrom($loaderPath).GetType('LayerTools.Loader.ModuleLoader')
}
elseif ($loader.Assembly.Location -ne $loaderPath) {
    throw "This session has already loaded LayerTools from $($loader.Assembly.Location | Split-Path | Split-Path | Split-Path). Start a new session to use $PSScriptRoot."
}

# Types of another context are found at the prompt and by the format views by these names only.
$accelerators = [psobject].Assembly.GetType('System.Management.Automation.TypeAccelerators')
foreach ($library in $loader::Initialize($assemblyFolder, $PSScriptRoot)) {
    foreach ($type in $library.GetExportedTypes()) {
        $accelerators::Remove($type.FullName) > $null
        $accelerators::Add($type.FullName, $type)
    }
}

Import-Module ([IO.Path]::Combine($assemblyFolder, 'LayerTools.dll'))
