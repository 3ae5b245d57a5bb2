BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Export-LayerReport' {
    BeforeEach {
        $folder = Join-Path $TestDrive ([guid]::NewGuid())
        Copy-Fixture groups-nested (Join-Path $folder 'hero.psd') > $null
        Copy-Fixture ag-marks-and-locks (Join-Path $folder 'ben.psd') > $null
        Push-Location -LiteralPath $folder
    }

    AfterEach { Pop-Location }

    It 'tells what changed since the delivery before, and of files that are new' {
        New-Item -ItemType Directory before > $null
        Copy-Item hero.psd before
        Get-LayerFile hero.psd | Rename-Layer 'Body' '<b>Torso' | Save-LayerFile -InPlace > $null
        $page = Get-LayerFile hero.psd, ben.psd | Export-LayerReport all.html -Reference before -WarningVariable warnings -WarningAction SilentlyContinue
        $text = Get-Content -Raw $page
        $text | Should -Match 'Changes since the delivery before'
        $text | Should -Match '&lt;b&gt;Torso'
        $text | Should -Match 'It was called'
        @($warnings) -match 'ben\.psd.*new as a whole' | Should -Not -BeNullOrEmpty
        { Get-LayerFile hero.psd | Export-LayerReport none.html -Reference nowhere -ErrorAction Stop } | Should -Throw '*There is no such file*'
        Test-Path none.html | Should -BeFalse
    }

    It 'writes one page for all files and passes it on' {
        $page = Get-LayerFile hero.psd, ben.psd | Export-LayerReport pages/all.html -Title 'Two & more'
        $page | Should -BeOfType System.IO.FileInfo
        $page.FullName | Should -Be (Join-Path $folder 'pages' 'all.html')
        $text = Get-Content -Raw $page
        $text | Should -BeLike '*<h1>Two &amp; more</h1>*<bdi>hero.psd</bdi>*<bdi>ben.psd</bdi>*'
        $text | Should -BeLike '*Checked by the profile <bdi>figure</bdi>*'
        $text | Should -Not -BeLike "*$folder*"
    }

    It 'takes files and paths, and lists those that cannot be read' {
        Set-Content broken.psd 'no layered file'
        $result = Get-Streams { Get-ChildItem *.psd | Export-LayerReport all.html }
        $result.Output.Name | Should -Be 'all.html'
        $result.Errors | Should -HaveCount 1
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'NotALayeredFile,*'
        Get-Content -Raw all.html | Should -BeLike '*<bdi>broken.psd</bdi>*could not be read*'
        ('*.psd' | Export-LayerReport paths.html -ErrorAction Ignore -Verbose 4>&1 | Where-Object { $_ -is [Management.Automation.VerboseRecord] }) -join '' | Should -BeLike '*2 files, 1 that could not be read*'
    }

    It 'counts pending edits' {
        Get-LayerFile ben.psd | Set-Layer -Name * -Mark Green | Export-LayerReport ben.html > $null
        Get-Content -Raw ben.html | Should -BeLike '*not saved*(100*%)*'
    }

    It 'measures what is asked for' {
        $file = Get-LayerFile hero.psd
        Get-Content -Raw ($file | Export-LayerReport plain.html) | Should -Not -BeLike '*<h4>Textures</h4>*'
        Get-Content -Raw ($file | Export-LayerReport full.html -Measure Symmetry, Cover, Detail, Budget -WarningAction Ignore) | Should -BeLike '*<h4>Symmetry</h4>*<h4>Painted underneath</h4>*<h4>Detail</h4>*<h4>Textures</h4>*'
    }

    It 'tells remedies, with their paths, only when asked' {
        $file = Get-LayerFile hero.psd
        Get-Content -Raw ($file | Export-LayerReport plain.html) | Should -Not -BeLike '*What to do*'
        Get-Content -Raw ($file | Export-LayerReport full.html -IncludeRemedy) | Should -BeLike '*What to do*Get-LayerFile -LiteralPath*'
    }

    It 'refuses a page that exists without -Force, before any work' {
        Set-Content all.html 'kept'
        { Get-LayerFile hero.psd | Export-LayerReport all.html } | Should -Throw '*-Force*'
        Get-Content all.html | Should -Be 'kept'
        (Get-LayerFile hero.psd | Export-LayerReport all.html -Force).Length | Should -BeGreaterThan 1000
    }

    It 'refuses <Path>, which is no page' -ForEach @(@{ Path = 'report.pdf' }, @{ Path = 'report' }) {
        { Get-LayerFile hero.psd | Export-LayerReport $Path } | Should -Throw '*.html*'
    }

    It 'refuses layers, and a pattern that is none' {
        $result = Get-Streams { Get-Layer hero.psd | Export-LayerReport all.html }
        $result.Errors.FullyQualifiedErrorId | Should -BeLike 'WholeFilesOnly,*'
        Test-Path all.html | Should -BeFalse
        { Get-LayerFile hero.psd | Export-LayerReport all.html -DoneName '(' } | Should -Throw '*regular expression*'
    }

    It 'writes nothing with -WhatIf, and nothing when stopped' {
        Get-LayerFile hero.psd | Export-LayerReport all.html -WhatIf | Should -BeNullOrEmpty
        { Get-LayerFile hero.psd, ben.psd | ForEach-Object { if ($_.Name -eq 'ben.psd') { throw 'enough' }; $_ } | Export-LayerReport all.html } | Should -Throw 'enough'
        Get-ChildItem -Force *.html, *.tmp | Should -BeNullOrEmpty
    }
}
