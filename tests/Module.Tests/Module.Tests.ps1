BeforeDiscovery {
    $platforms = 'win-x64', 'win-arm64', 'osx', 'linux-x64', 'linux-arm64', 'linux-musl-x64'
    $isCore = $PSEdition -eq 'Core'
}

BeforeAll {
    Import-Module "$PSScriptRoot/Support/NewSession.psm1" -Force
    $folder = $env:LAYERTOOLS_MODULE
    $fixture = (Resolve-Path "$PSScriptRoot/../Fixtures/ag-groups.psd").Path
}

Describe 'The manifest' {
    It 'is valid' {
        (Test-ModuleManifest "$folder/LayerTools.psd1").Version | Should -Be '0.1.0'
    }

    It 'exports every cmdlet that the assembly has, and no others' {
        $assembly = (Get-Command Get-LayerFile).ImplementingType.Assembly
        $written = foreach ($type in $assembly.GetExportedTypes()) {
            foreach ($cmdlet in $type.GetCustomAttributes([System.Management.Automation.CmdletAttribute], $false)) { "$($cmdlet.VerbName)-$($cmdlet.NounName)" }
        }
        $declared = (Import-PowerShellDataFile "$folder/LayerTools.psd1").CmdletsToExport
        $exported = (Get-Module LayerTools).ExportedCmdlets.Keys
        $declared | Sort-Object | Should -Be ($written | Sort-Object)
        $exported | Sort-Object | Should -Be ($written | Sort-Object)
    }

    It 'exports cmdlets only, without wildcards' {
        $module = Get-Module LayerTools
        $module.ExportedFunctions.Count + $module.ExportedAliases.Count + $module.ExportedVariables.Count | Should -Be 0
        $manifest = Import-PowerShellDataFile "$folder/LayerTools.psd1"
        foreach ($list in 'FunctionsToExport', 'AliasesToExport', 'VariablesToExport') { $manifest[$list].Count | Should -Be 0 -Because $list }
    }

    It 'uses approved verbs' {
        $verbs = (Get-Verb).Verb
        (Get-Module LayerTools).ExportedCmdlets.Values | ForEach-Object { $_.Verb | Should -BeIn $verbs }
    }

    It 'names the version of the assemblies' {
        $assembly = (Get-Command Get-LayerFile).ImplementingType.Assembly
        $assembly.GetName().Version.ToString(3) | Should -Be (Get-Module LayerTools).Version.ToString()
    }
}

Describe 'Loading' {
    It 'takes the build for this runtime' {
        $expected = if ($PSEdition -eq 'Core' -and [Environment]::Version.Major -ge 8) { 'net8.0' } else { 'netstandard2.0' }
        foreach ($type in (Get-Command Get-LayerFile).ImplementingType, [LayerTools.Model.Layer]) {
            Split-Path (Split-Path $type.Assembly.Location) -Leaf | Should -Be $expected
        }
    }

    It 'works with the netstandard2.0 build too' {
        $other = New-Item -ItemType Directory (Join-Path $TestDrive 'copy/LayerTools')
        Copy-Item "$folder/*" $other -Recurse
        Remove-Item "$other/net8.0" -Recurse
        Rename-Item "$other/netstandard2.0" 'net8.0'
        $result = Invoke-NewSession -Arguments "$other", $fixture, (Join-Path $TestDrive 'pictures') -Script {
            param($Module, $File, $Pictures)
            Import-Module $Module
            $read = Get-LayerFile $File
            $written = $read | Export-LayerImage $Pictures
            $list = Get-Content -LiteralPath $written[-1].FullName -Raw | ConvertFrom-Json
            $loaded = [AppDomain]::CurrentDomain.GetAssemblies() | Where-Object { $_.GetName().Name -eq 'System.Text.Json' } | ForEach-Object Location
            [pscustomobject]@{
                Listed = @($list.layers).Count
                OwnJson = @($loaded -like "$Module*").Count
                Layers = $read.LayerCount
                Framework = $read.GetType().Assembly.GetCustomAttributes([Runtime.Versioning.TargetFrameworkAttribute], $false)[0].FrameworkName
            }
        }
        $result.Framework | Should -Be '.NETStandard,Version=v2.0'
        $result.Layers | Should -Be (Get-LayerFile $fixture).LayerCount
        $result.Listed | Should -Be $result.Layers
        $result.OwnJson | Should -Be 1 -Because 'the library that the framework lacks comes from the module''s folder, in its own context'
    }

    It 'works again with -Force, and after Remove-Module' {
        $counts = Invoke-NewSession -Arguments $folder, $fixture -Script {
            param($Module, $File)
            Import-Module $Module
            (Get-LayerFile $File).LayerCount
            Import-Module $Module -Force
            (Get-LayerFile $File).LayerCount
            (Get-Command -Module LayerTools).Count
            Remove-Module LayerTools
            Import-Module $Module
            (Get-LayerFile $File).LayerCount
            (Get-Command -Module LayerTools).Count
            [LayerTools.Model.Bounds]::Empty.Width
        }
        $layers = (Get-LayerFile $fixture).LayerCount
        $cmdlets = (Get-Command -Module LayerTools).Count
        $counts | Should -Be @($layers, $layers, $cmdlets, $layers, $cmdlets, 0)
    }

    It 'lets the types be named at the prompt' {
        $found = Invoke-NewSession -Arguments $folder -Script {
            param($Module)
            Import-Module $Module
            [LayerTools.Model.Layer].FullName
            [LayerTools.Names.Side]::Left.ToString()
        }
        $found | Should -Be 'LayerTools.Model.Layer', 'Left'
    }

    It 'loads no third-party library before one is needed' -Skip:(-not $isCore) {
        $loaded = Invoke-NewSession -Arguments $folder -Script {
            param($Module)
            Import-Module $Module
            [Runtime.Loader.AssemblyLoadContext]::GetLoadContext([LayerTools.Model.Layer].Assembly).Assemblies | ForEach-Object { $_.GetName().Name }
        }
        $loaded | Where-Object { $_ -notlike 'LayerTools.*' -and $_ -notlike 'System.*' -and $_ -ne 'netstandard' } | Should -BeNullOrEmpty
    }

    It 'says what to do when another copy is loaded already' {
        $copy = New-Item -ItemType Directory (Join-Path $TestDrive 'second/LayerTools')
        Copy-Item "$folder/*" $copy -Recurse
        $message = Invoke-NewSession -Arguments $folder, "$copy" -Script {
            param($Module, $Copy)
            Import-Module $Module
            Remove-Module LayerTools
            try { Import-Module $Copy; 'imported' } catch { "$_" }
        }
        $message | Should -BeLike '*already loaded LayerTools from*new session*'
    }
}

Describe 'Beside a module with its own copy of a library' -Skip:(-not $isCore) {
    BeforeAll {
        # Invented libraries that only share the name; real other versions would differ in the same two ways, older and newer.
        $otherModules = @{}
        foreach ($version in '1.0.0.0', '9.9.0.0') {
            $module = New-Item -ItemType Directory (Join-Path $TestDrive "modules-$version/OtherModule")
            Invoke-NewSession -Arguments "$module", $version -Script {
                param($Target, $Version)
                Add-Type -OutputType Library -OutputAssembly "$Target/SixLabors.ImageSharp.dll" -TypeDefinition @"
[assembly: System.Reflection.AssemblyVersion("$Version")]
namespace SixLabors.ImageSharp { public static class Configuration { } }
"@
            }
            Set-Content "$module/OtherModule.psm1" @'
$library = [Reflection.Assembly]::LoadFrom("$PSScriptRoot/SixLabors.ImageSharp.dll")
function Get-OtherVersion { $library.GetType('SixLabors.ImageSharp.Configuration', $true).Assembly.GetName().Version.ToString() }
'@
            $otherModules[$version] = "$module"
        }
    }

    It 'both work: the other copy is <Version>, and <Order> is imported first' -ForEach @(
        @{ Version = '1.0.0.0'; Order = 'it' }
        @{ Version = '1.0.0.0'; Order = 'LayerTools' }
        @{ Version = '9.9.0.0'; Order = 'it' }
        @{ Version = '9.9.0.0'; Order = 'LayerTools' }
    ) {
        $modules = if ($Order -eq 'it') { $otherModules[$Version], $folder } else { $folder, $otherModules[$Version] }
        $sheet = Join-Path $TestDrive "sheet-$Version-$Order.png"
        $result = Invoke-NewSession -Arguments $modules[0], $modules[1], $fixture, $sheet -Script {
            param($First, $Second, $File, $Sheet)
            Import-Module $First
            Import-Module $Second
            $sheets = @(Get-LayerFile $File | Export-LayerSheet -Path $Sheet)
            $context = [Runtime.Loader.AssemblyLoadContext]::GetLoadContext([LayerTools.Model.Layer].Assembly)
            [pscustomobject]@{
                Other = Get-OtherVersion
                Ours = $context.LoadFromAssemblyName('SixLabors.ImageSharp').GetName().Version.ToString()
                Sheet = $sheets[0].Length -gt 0
                Layers = @(Get-Layer $File).Count
            }
        }
        $result.Other | Should -Be $Version
        $result.Ours | Should -Be '2.0.0.0'
        $result.Sheet | Should -BeTrue
        $result.Layers | Should -Be (Get-LayerFile $fixture).LayerCount
    }

    It 'holds since the cmdlets refer to nothing but the module''s own libraries, the shell and the runtime' {
        $own = 'LayerTools.Core', 'LayerTools.Sheets', 'System.Management.Automation', 'netstandard'
        $names = (Get-Command Get-LayerFile).ImplementingType.Assembly.GetReferencedAssemblies().Name
        $names | Where-Object { $_ -notin $own -and $_ -notlike 'System.*' } | Should -BeNullOrEmpty
    }
}

Describe 'What is shipped' {
    It 'has the native libraries for <_>' -ForEach $platforms {
        $platform = $_
        $extension = if ($platform -like 'win-*') { 'dll' } elseif ($platform -eq 'osx') { 'dylib' } else { 'so' }
        foreach ($library in 'libSkiaSharp', 'libHarfBuzzSharp') { "$folder/$platform/$library.$extension" | Should -Exist }
    }

    It 'draws text with the native libraries from its own folder' -Skip:(-not $isCore) {
        $paths = Invoke-NewSession -Arguments $folder, $fixture, (Join-Path $TestDrive 'native.png') -Script {
            param($Module, $File, $Sheet)
            Import-Module $Module
            Get-LayerFile $File | Export-LayerSheet -Path $Sheet > $null
            (Get-Process -Id $PID).Modules.FileName | Where-Object { $_ -match 'lib(Skia|HarfBuzz)Sharp' }
        }
        $paths.Count | Should -BeGreaterOrEqual 1
        foreach ($path in $paths) { $path | Should -BeLike "$((Get-Item $folder).FullName)*" }
    }

    It 'carries its licence, and names every third-party assembly''s package in the notices' {
        "$folder/LICENSE" | Should -Exist
        $notices = Get-Content "$folder/THIRD-PARTY-NOTICES.txt" -Raw
        $assemblies = Get-ChildItem "$folder/net8.0", "$folder/netstandard2.0" -Filter '*.dll' | Where-Object Name -NotLike 'LayerTools*'
        $assemblies.Count | Should -BeGreaterThan 3
        foreach ($assembly in $assemblies) { $notices | Should -Match "(?m)^$([regex]::Escape($assembly.BaseName)) \d" }
        $notices | Should -Match 'Apache License'
    }

    It 'has no leftovers of the build' {
        Get-ChildItem $folder -Recurse -File | Where-Object Name -Match '\.(pdb|deps\.json)$' | Should -BeNullOrEmpty
    }
}
